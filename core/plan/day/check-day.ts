import { taskKinds } from '../../changeover/task-kinds.ts';
import type { Act, Day } from '../../show/act.ts';
import { actsOfDay } from '../../show/act-sheet.ts';
import type { Id } from '../../show/rig.ts';
import type { Show } from '../../show/show.ts';
import { needsSocket } from '../plan-sockets.ts';

/** Something about a day that planning cannot work with (`stops`), or that the engineer should know first. */
export type DayDoubt = { stops: boolean; what: string; todo: string };

/** Minutes of half a day: times further apart than this, backwards, mean the other side of midnight. */
const halfADay = 720;

/** Looks through a day before it is planned. An empty list: nothing to say. */
export function checkDay(show: Show, dayId: Id): DayDoubt[] {
  const day = show.days.get(dayId);
  if (!day) return [stop('The show has no such day.', 'Choose a day of this show.')];
  const acts = actsOfDay(show, dayId);
  return [
    ...checkRig(show, day, acts),
    ...checkTimes(acts),
    ...checkSoundChecks(show, acts),
    ...checkCrew(day),
  ];
}

function stop(what: string, todo: string): DayDoubt {
  return { stops: true, what, todo };
}

function note(what: string, todo: string): DayDoubt {
  return { stops: false, what, todo };
}

function checkRig(show: Show, day: Day, acts: Act[]): DayDoubt[] {
  if (acts.length === 0)
    return [stop(`${day.name} has no acts.`, 'Put acts into the running order of the day.')];
  const actIds = new Set(acts.map((act) => act.id));
  const lines = [...show.sources.values()].filter(
    (source) => actIds.has(source.actId) && needsSocket(source),
  );
  const boxIds = new Set(
    [...show.boxes.values()].filter((box) => box.rigId === day.rigId).map((box) => box.id),
  );
  const sockets = [...show.sockets.values()].filter((socket) => boxIds.has(socket.boxId));
  const found: DayDoubt[] = [];
  if (lines.length === 0)
    found.push(
      stop(
        `No act of ${day.name} has a line from the stage.`,
        'Read the riders of its acts, or type their sources.',
      ),
    );
  else if (sockets.length === 0)
    found.push(
      stop(`The rig of ${day.name} has no sockets.`, 'Add a stage box with its sockets to the rig.'),
    );
  else if (sockets.every((socket) => socket.reservedFor !== null))
    found.push(
      stop(
        `Every socket of the rig of ${day.name} is reserved.`,
        'Free sockets for the acts, or add a stage box.',
      ),
    );
  if (acts.length === 1)
    found.push(
      note(
        `${day.name} has one act, so there is no changeover.`,
        'Its own patch is planned; add acts for a day.',
      ),
    );
  return found;
}

function checkTimes(acts: Act[]): DayDoubt[] {
  const found: DayDoubt[] = [];
  acts.forEach((act, place) => {
    if (act.startMinute !== null && act.endMinute !== null && act.endMinute < act.startMinute)
      found.push(
        note(
          `${act.name} ends at ${clock(act.endMinute)}, before it starts at ${clock(act.startMinute)}.`,
          'Where it ends after midnight, go on counting: 00:30 is 24:30.',
        ),
      );
    const before = acts.slice(0, place).findLast((it) => it.startMinute !== null);
    if (!before || act.startMinute === null || before.startMinute === null) return;
    const end = Math.max(before.endMinute ?? before.startMinute, before.startMinute);
    if (act.startMinute >= end) return;
    found.push(
      before.startMinute - act.startMinute > halfADay
        ? note(
            `${act.name} starts at ${clock(act.startMinute)} and comes after ${before.name}, which looks like past midnight.`,
            'Go on counting past midnight: 00:30 is 24:30. Until then its changeover has no minutes.',
          )
        : note(
            `${act.name} starts at ${clock(act.startMinute)}, before ${before.name} ends at ${clock(end)}.`,
            'Move one of the times, or change the running order. The plan follows the running order.',
          ),
    );
  });
  return found;
}

function checkSoundChecks(show: Show, acts: Act[]): DayDoubt[] {
  const checks = acts.flatMap((act) => {
    const { soundCheckStartMinute: from, soundCheckEndMinute: to } = act;
    return from === null || to === null ? [] : [{ act, from, to }];
  });
  return checks.flatMap(({ act, from, to }, place) => {
    if (to < from)
      return [note(`The sound check of ${act.name} ends before it starts.`, 'Put its two times in order.')];
    const found: DayDoubt[] = [];
    const playing = acts.find(
      (it) => it.startMinute !== null && it.endMinute !== null && it.startMinute < to && from < it.endMinute,
    );
    if (playing)
      found.push(
        note(
          `The sound check of ${act.name} falls into the set of ${playing.name}.`,
          'Move the sound check or the set.',
        ),
      );
    else if (act.startMinute !== null && from >= act.startMinute)
      found.push(note(`The sound check of ${act.name} comes after its set.`, 'Put it before the set.'));
    const other = checks.slice(0, place).find((it) => it.from < to && from < it.to);
    if (other)
      found.push(
        note(
          `The sound checks of ${other.act.name} and ${act.name} overlap, and there is one stage.`,
          'Move one of them.',
        ),
      );
    const needed = Math.ceil(checkSeconds(show, act) / 60);
    if (needed > to - from)
      found.push(
        note(
          `The sound check of ${act.name} has ${to - from} min, and its lines and mixes take about ${needed}.`,
          'Make it longer, or only check lines and what is new.',
        ),
      );
    return found;
  });
}

/** The desk's part of a sound check: every line once, and the first wishes of every mix. */
function checkSeconds(show: Show, act: Act): number {
  const lines = [...show.sources.values()].filter((it) => it.actId === act.id && needsSocket(it)).length;
  const mixes = [...show.mixes.values()].filter(
    (it) => it.actId === act.id && it.mixedAt === 'house desk',
  ).length;
  return lines * taskKinds['line check'].seconds + mixes * taskKinds['monitor check'].seconds;
}

function checkCrew(day: Day): DayDoubt[] {
  if (day.crewSize > 0) return [];
  return [
    note(
      `${day.name} has no crew on stage.`,
      'Set how many people plug and carry. Until then changeovers have no schedule.',
    ),
  ];
}

/** Minutes from midnight as hours and minutes; past midnight it goes on counting. */
export function clock(minute: number): string {
  return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(Math.round(minute % 60)).padStart(2, '0')}`;
}
