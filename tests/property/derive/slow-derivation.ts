import type { Plan } from '../../../core/plan/plan.ts';
import type { Mix, Source, Wish } from '../../../core/show/act.ts';
import type { ActSheet } from '../../../core/show/act-sheet.ts';
import type { Device } from '../../../core/show/rig.ts';
import { factsOfKind } from '../../../core/show/source-kinds.ts';

/**
 * The rules of the product once more, as slow and obvious as they can be written, from the product's text and not
 * from the program's code: every question is answered by looking through all rows again.
 */

export type SlowFeed = {
  purpose: string | null;
  channel: number | null;
  levelDb: number | null;
  wishId: string | null;
};

type Asked = { wish: Wish; levelDb: number | null };

function targetOf(wish: Wish): string {
  return JSON.stringify([wish.sourceId, wish.group, wish.sameAsMixId]);
}

function mixesReachedBySameAs(sheet: ActSheet, start: string): string[] {
  let reached = [start];
  for (;;) {
    const next = sheet.wishes
      .filter(
        (wish) => reached.includes(wish.mixId) && sheet.mixes.some((mix) => mix.id === wish.sameAsMixId),
      )
      .map((wish) => wish.sameAsMixId ?? '');
    const larger = [...new Set([...reached, ...next])];
    if (larger.length === reached.length) return reached;
    reached = larger;
  }
}

/** The wishes of a mix that count: not replaced by a later one on the same thing, not part of a circle. */
function wishesOf(sheet: ActSheet, mixId: string): Wish[] {
  const all = sheet.wishes.filter((wish) => wish.mixId === mixId);
  return all.filter((wish, at) => {
    if (all.slice(at + 1).some((later) => targetOf(later) === targetOf(wish))) return false;
    return wish.sameAsMixId === null || !mixesReachedBySameAs(sheet, wish.sameAsMixId).includes(mixId);
  });
}

function names(wish: Wish, source: Source): boolean {
  if (wish.sourceId !== null) return wish.sourceId === source.id;
  return wish.group === 'everything' || wish.group === factsOfKind(source.kind).group;
}

function wordLevel(sheet: ActSheet, wish: Wish): number | null {
  if (wish.levelDb !== null) return wish.levelDb;
  if (wish.amount === 'little') return sheet.rig.littleDb;
  if (wish.amount === 'some') return sheet.rig.someDb;
  return wish.amount === 'none' ? null : sheet.rig.lotsDb;
}

/** What a mix asks of a source: nothing at all (undefined), or a wish with a level, null where it is to be off. */
function asked(sheet: ActSheet, mixId: string, source: Source): Asked | undefined {
  const wishes = wishesOf(sheet, mixId);
  const answer = askedFirst(sheet, wishes, source);
  const only = wishes.filter((wish) => wish.amount === 'only');
  const keeps = (wish: Wish) =>
    wish.sameAsMixId === null
      ? names(wish, source)
      : typeof asked(sheet, wish.sameAsMixId, source)?.levelDb === 'number';
  // A lost "only" names nothing that is here, and takes nothing away.
  const meant = only.filter((wish) => isThere(sheet, wish));
  if (answer && meant.length > 0 && !meant.some(keeps)) return { ...answer, levelDb: null };
  return answer;
}

function isThere(sheet: ActSheet, wish: Wish): boolean {
  if (wish.sourceId !== null) return sheet.sources.some((source) => source.id === wish.sourceId);
  return wish.sameAsMixId === null || sheet.mixes.some((mix) => mix.id === wish.sameAsMixId);
}

function askedFirst(sheet: ActSheet, wishes: Wish[], source: Source): Asked | undefined {
  const onSource = wishes.filter((wish) => wish.sourceId === source.id);
  const onGroup = wishes.filter(
    (wish) => wish.group !== null && wish.group !== 'everything' && names(wish, source),
  );
  const onEverything = wishes.filter((wish) => wish.group === 'everything');
  const direct = onSource.at(-1) ?? onGroup.at(-1) ?? onEverything.at(-1);
  if (direct) {
    const forHallOnly = direct.sourceId === null && source.audience === 'front of house only';
    return { wish: direct, levelDb: forHallOnly ? null : wordLevel(sheet, direct) };
  }
  for (const wish of wishes.filter((it) => it.sameAsMixId !== null).reverse()) {
    const there = asked(sheet, wish.sameAsMixId ?? '', source);
    if (!there) continue;
    const asItIs = (wish.amount === null && wish.levelDb === null) || wish.amount === 'only';
    if (there.levelDb === null || asItIs) return { wish, levelDb: there.levelDb };
    return { wish, levelDb: wordLevel(sheet, wish) };
  }
  return undefined;
}

function channelOf(plan: Plan, source: Source, purpose: string): number | null {
  return plan.copies.find((copy) => copy.sourceId === source.id && copy.purpose === purpose)?.channel ?? null;
}

const off: SlowFeed = { purpose: null, channel: null, levelDb: null, wishId: null };

/** The five steps. */
export function slowFeed(sheet: ActSheet, plan: Plan, mix: Mix, source: Source): SlowFeed {
  const ask = asked(sheet, mix.id, source);
  const wishId = ask?.wish.id ?? null;
  if (!ask || ask.levelDb === null || mix.mixedAt === 'elsewhere') return { ...off, wishId };
  const ofCell = sheet.decisions.filter(
    (it) => 'mixId' in it && 'sourceId' in it && it.mixId === mix.id && it.sourceId === source.id,
  );
  const purposes: string[] = [];
  for (const decision of ofCell) if (decision.about === 'feed') purposes.splice(0, 1, decision.purpose);
  if (mix.deviceKind === 'in-ear') purposes.push('in-ears');
  else if (mix.deviceKind !== null) purposes.push('wedges');
  purposes.push('monitors', 'foh');
  const purpose = purposes.find((it) => channelOf(plan, source, it) !== null);
  if (purpose === undefined) return { ...off, wishId };
  let levelDb: number = ask.levelDb;
  for (const decision of ofCell) if (decision.about === 'level') levelDb = decision.levelDb;
  return { purpose, channel: channelOf(plan, source, purpose), levelDb: Math.min(levelDb, 0), wishId };
}

/** Powers added one by one; null for an empty mix. */
export function slowSumDb(levelsDb: readonly number[]): number | null {
  let sum = 0;
  for (const db of levelsDb) sum += Math.exp((db * Math.LN10) / 10);
  return sum === 0 ? null : (Math.log(sum) / Math.LN10) * 10;
}

export type SlowCue = {
  cueOutputId: string | null;
  format: string;
  offsetDb: number | null;
  delayMs: number | null;
};

export function slowCue(sheet: ActSheet, plan: Plan, mix: Mix): SlowCue {
  const decided = sheet.decisions.filter((it) => it.about === 'cue' && it.mixId === mix.id).at(-1);
  const kind = mix.deviceKind === 'in-ear' ? 'in-ear' : 'wedge';
  const cue =
    sheet.cueOutputs.find((it) => decided?.about === 'cue' && it.id === decided.cueOutputId) ??
    sheet.cueOutputs.find((it) => it.kind === kind) ??
    sheet.cueOutputs[0];
  if (!cue) return { cueOutputId: null, format: 'mono', offsetDb: null, delayMs: null };
  const planned = plan.mixes.find((it) => it.mixId === mix.id);
  const { cueXM, cueYM, stageDepthM } = sheet.rig;
  const onPlotM =
    cueXM === null || cueYM === null ? null : Math.sqrt(cueXM ** 2 + (cueYM - stageDepthM / 2) ** 2);
  const farM = cue.distanceFromStageM ?? onPlotM;
  const delayMs =
    cue.kind === 'in-ear' || farM === null
      ? null
      : farM / (0.3432 * Math.sqrt((sheet.rig.airTemperatureC + 273.15) / 293.15));
  const devices = sheet.devices.filter((device) => planned?.deviceIds.includes(device.id));
  const atPerformer = devices.map(soundLevel);
  const own = sheet.devices.find((device) => device.id === cue.deviceId);
  const atEngineer = own ? soundLevel(own) : null;
  const known = atPerformer.filter((db) => db !== null);
  const allEars = devices.every((device) => device.kind === 'in-ear');
  const loud = allEars ? Math.max(...known) : (slowSumDb(known) ?? 0);
  const matched = atEngineer !== null && known.length > 0 && known.length === devices.length;
  return {
    cueOutputId: cue.id,
    format: planned?.format === 'stereo' && cue.format === 'stereo' ? 'stereo' : 'mono',
    offsetDb: matched ? loud - atEngineer : null,
    delayMs,
  };
}

/** Sensitivity, and for a loudspeaker 3 dB for each doubling of power and 6 dB for each of the distance. */
function soundLevel(device: Device): number | null {
  if (device.sensitivityDbSpl === null) return null;
  if (device.kind === 'in-ear') return device.sensitivityDbSpl;
  if (device.powerW === null || device.listeningDistanceM === null) return null;
  const doublings = Math.log2(device.powerW) - 2 * Math.log2(device.listeningDistanceM);
  return device.sensitivityDbSpl + doublings * 10 * Math.log10(2);
}
