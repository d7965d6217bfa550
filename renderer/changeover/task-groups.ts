import type { Changeover, ScheduledTask } from '../../core/changeover/changeover.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { words } from '../wording/words.ts';

/** Tasks under one head, in the order of the schedule. */
export type TaskGroup = { key: string; head: string; note: string; tasks: ScheduledTask[] };

const byStart = (one: ScheduledTask, other: ScheduledTask) =>
  one.startSeconds - other.startSeconds || one.endSeconds - other.endSeconds;

/** What is plugged before the changeover begins; none where there is nothing. */
export function groupAhead({ ahead }: Changeover, from: string): TaskGroup[] {
  if (ahead.length === 0) return [];
  const text = words.changeover;
  const tasks = ahead.map((task) => ({
    ...task,
    startSeconds: 0,
    endSeconds: 0,
    people: [],
    isCritical: false,
  }));
  return [{ key: 'ahead', head: text.ahead(from), note: text.taskCount(tasks.length), tasks }];
}

/** What the desk and each person does, one after the other, and what nobody is there for. What two carry stands in both lists. */
export function groupsByPerson({ tasks, people }: Changeover): TaskGroup[] {
  const text = words.changeover;
  const desk = tasks.filter((task) => task.desk > 0).sort(byStart);
  const nobody = tasks.filter((task) => task.desk === 0 && task.people.length === 0);
  return [
    { key: 'desk', head: text.desk, note: text.taskCount(desk.length), tasks: desk },
    ...people.map((person, place): TaskGroup => {
      const own = tasks.filter((task) => task.people.includes(place)).sort(byStart);
      const walk = person.walkM > 0 ? `, ${text.walk(person.walkM)}` : '';
      return {
        key: `person ${place}`,
        head: person.name,
        note: `${text.taskCount(own.length)}${walk}`,
        tasks: own,
      };
    }),
    ...(nobody.length > 0
      ? [{ key: 'nobody', head: text.nobody, note: text.taskCount(nobody.length), tasks: nobody }]
      : []),
  ];
}

/** What is done where: the desk, each stage box, and the places on stage; places with one task come together. */
export function groupsByPlace({ tasks }: Changeover, sheet: ActSheet): TaskGroup[] {
  const text = words.changeover;
  const boxOf = new Map(sheet.sockets.map((socket) => [socket.id, socket.boxId]));
  const placeOf = (task: ScheduledTask): string => {
    if (task.desk > 0) return text.desk;
    const isAtBox = task.kind === 'plug' || task.kind === 'unplug';
    const box = isAtBox && sheet.boxes.find((it) => it.id === boxOf.get(task.socketId ?? ''));
    return box ? text.box(box.name) : task.placeName;
  };
  const found = new Map<string, ScheduledTask[]>();
  for (const task of tasks) found.set(placeOf(task), [...(found.get(placeOf(task)) ?? []), task]);
  const fixed = [text.desk, ...sheet.boxes.map((box) => text.box(box.name))];
  const isOwn = (place: string) => fixed.includes(place) || (found.get(place)?.length ?? 0) > 1;
  const elsewhere = [...found].flatMap(([place, there]) => (isOwn(place) ? [] : there));
  const places = [...fixed, ...[...found.keys()].filter((it) => !fixed.includes(it) && isOwn(it)).sort()];
  return [
    ...places.map((place) => [place, found.get(place) ?? []] as const),
    [text.noPlace, elsewhere] as const,
  ]
    .filter(([, there]) => there.length > 0)
    .map(([head, there]) => ({
      key: head,
      head,
      note: text.taskCount(there.length),
      tasks: [...there].sort(byStart),
    }));
}
