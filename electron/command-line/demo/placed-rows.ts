import { Mix, Performer, Source } from '../../../core/show/act.ts';
import { type Put, put } from '../../../core/show/change.ts';
import { factsOfKind } from '../../../core/show/source-kinds.ts';
import { type DemoAct, houseLines } from './demo-day.ts';

type Place = { xM: number; yM: number };

/** How far in front of a performer their wedge stands, and how far beside a drummer the fill, in metres. */
const wedgeInFrontM = 1.3;
const fillBesideM = 1.5;
const sideBySideM = 1.1;

/** The rows of an act with performers, lines and devices on the plot; what the demo has no place for stays without. */
export function placed(demo: DemoAct, rows: readonly Put[]): Put[] {
  const performers = performerPlaces(demo, rows);
  const listeners = rows.flatMap((it) => (it.table === 'listeners' ? [it.row] : []));
  return rows.map((it) => {
    if (it.table === 'performers')
      return put('performers', Performer.parse({ ...it.row, ...performers.get(it.row.id) }));
    if (it.table === 'sources') return put('sources', placedSource(demo, it.row, performers));
    if (it.table !== 'mixes') return it;
    const at = listeners.flatMap(({ mixId, performerId }) =>
      mixId === it.row.id ? (performers.get(performerId) ?? []) : [],
    );
    return put('mixes', Mix.parse({ ...it.row, ...devicePlace(it.row, at) }));
  });
}

/** A line at its place; a line of the house stands where it stands all day. */
function placedSource(demo: DemoAct, source: Source, performers: ReadonlyMap<string, Place>): Source {
  const named = <T>(rows: readonly [RegExp, T][]) => rows.find(([words]) => words.test(source.name))?.[1];
  const sharedLine = named(demo.shared);
  const own = placeOf(demo, source.name) ?? performers.get(source.performerId ?? '');
  const place = sharedLine ? houseLines[sharedLine] : own;
  const stands = { sharedLine: sharedLine ?? '', riser: named(demo.risers) ?? '' };
  return Source.parse({ ...source, ...place, ...(place && vocalMicrophone(source)), ...stands });
}

/** A singer's microphone on its stand: its front to the mouth, upstage and a little upwards. Common practice. */
function vocalMicrophone({ kind, pickUp }: Source): Partial<Source> {
  if (pickUp !== 'mic' || factsOfKind(kind).group !== 'vocals') return {};
  return { pattern: 'cardioid', aimDeg: 0, tiltDeg: 30, heightM: 1.5 };
}

/** Where each performer stands; those with one place stand side by side around it. */
function performerPlaces(demo: DemoAct, rows: readonly Put[]): Map<string, Place> {
  const groups = new Map<string, { id: string; place: Place }[]>();
  for (const it of rows) {
    const place = it.table === 'performers' && placeOf(demo, it.row.name);
    if (!place) continue;
    const group = `${place.xM} ${place.yM}`;
    groups.set(group, [...(groups.get(group) ?? []), { id: it.row.id, place }]);
  }
  const spread = [...groups.values()].flatMap((group) =>
    group.map(({ id, place }, nth): [string, Place] => {
      const asideM = (nth - (group.length - 1) / 2) * sideBySideM;
      return [id, { ...place, xM: place.xM + asideM }];
    }),
  );
  return new Map(spread);
}

function placeOf(demo: DemoAct, name: string): Place | null {
  const found = demo.places.find(([words]) => words.test(name));
  return found ? { xM: found[1], yM: found[2] } : null;
}

/** A wedge in front of the middle of its listeners and aimed at them, a drum fill beside the drummer. */
function devicePlace({ deviceKind }: Mix, at: readonly Place[]): Partial<Mix> {
  if (at.length === 0 || deviceKind === 'in-ear') return {};
  const xM = mean(at.map((it) => it.xM));
  const yM = mean(at.map((it) => it.yM));
  if (deviceKind === 'drum fill') return { xM: xM + fillBesideM, yM, aimDeg: -90 };
  return { xM, yM: yM - wedgeInFrontM, aimDeg: 0 };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
