import type { Work } from '../../core/changeover/timetable.ts';
import { type LinearModel, ModelBuilder } from '../../core/plan/day/linear-model.ts';

/**
 * Whether work can be over by a time, as a linear model: one column for each activity and moment at which it may
 * start. The formulation is Pritsker's of 1969; it knows nothing of the scheduler that it checks.
 */
export function timeSlotsModel(work: Work, end: number): LinearModel {
  const builder = new ModelBuilder();
  const startAt = work.activities.map(({ duration }) =>
    Array.from({ length: Math.max(0, end - duration + 1) }, () => builder.column(0)),
  );
  for (const columns of startAt)
    builder.row(
      1,
      1,
      columns.map((column) => [column, 1]),
    );
  const startsWithin = (index: number, from: number, to: number, factor: number): [number, number][] =>
    (startAt[index] ?? []).flatMap((column, time) => (from <= time && time <= to ? [[column, factor]] : []));
  work.activities.forEach(({ after }, index) => {
    for (const before of after)
      for (let time = 0; time <= end; time++) {
        const stillRuns = time - (work.activities[before]?.duration ?? 0) + 1;
        builder.row(Number.NEGATIVE_INFINITY, 1, [
          ...startsWithin(before, stillRuns, end, 1),
          ...startsWithin(index, 0, time, 1),
        ]);
      }
  });
  work.capacities.forEach((capacity, resource) => {
    for (let time = 0; time < end; time++)
      builder.row(
        Number.NEGATIVE_INFINITY,
        capacity,
        work.activities.flatMap(({ duration, needs }, index) => {
          const need = needs[resource] ?? 0;
          return need > 0 ? startsWithin(index, time - duration + 1, time, need) : [];
        }),
      );
  });
  return builder.build();
}
