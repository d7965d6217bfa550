import type { Mix } from '../show/act.ts';
import type { ActSheet } from '../show/act-sheet.ts';
import { type CopiesOfSource, noCopies, purposeOfDevice } from './copies-of-source.ts';
import type { CellDecisions } from './feed-decisions.ts';
import { chosenCode, codeOf, firstFlowing, oneWhereItFlows } from './outcomes.ts';
import { cellState, type ResolvedWishes } from './wishes.ts';

/** Nothing starts above unity, whoever asks for it. */
const unityDb = 0;

/**
 * What every mix takes of every source, packed: a number or two for each cell. Thousands of `Feed` objects would take
 * longer to make than everything else that is derived, and nobody looks at most of them. Flat, mix after mix, so
 * that a cell is at `mix * sourceCount + source`.
 */
export type Sends = {
  sourceCount: number;
  /** Code of the outcome of the rule, see `outcomes.ts`. */
  outcome: Uint8Array;
  /** The start levels of the act in dB, each once: never above 0. */
  levelsDb: readonly number[];
  /** Place in `levelsDb` of the start level; only of use where something flows. */
  levelAt: Uint32Array;
  /** For each source the outcomes it has in some mix, a bit for each. */
  outcomesOfSource: Int32Array;
  /** The outcomes that some cell has. */
  outcomesOfAll: number;
};

/** Which copy of every source feeds every mix at what start level, and by which step of the rule. */
export function deriveSends(
  sheet: ActSheet,
  copies: readonly CopiesOfSource[],
  cells: CellDecisions,
  wishes: ResolvedWishes,
): Sends {
  const { sourceCount } = wishes;
  const outcome = settleAll(sheet, copies, wishes);
  choose(sheet, copies, cells, wishes, outcome);
  const outcomesOfSource = new Int32Array(sourceCount);
  for (let cell = 0; cell < outcome.length; )
    for (let at = 0; at < sourceCount; at++, cell++)
      outcomesOfSource[at] = (outcomesOfSource[at] ?? 0) | (1 << (outcome[cell] ?? 0));
  let outcomesOfAll = 0;
  for (const bits of outcomesOfSource) outcomesOfAll |= bits;
  return { sourceCount, outcome, ...startLevels(cells, wishes), outcomesOfSource, outcomesOfAll };
}

/** Whether a source flows into a mix. */
export function flows(sends: Sends, sourceAt: number, mixAt: number): boolean {
  return (sends.outcome[mixAt * sends.sourceCount + sourceAt] ?? 0) >= firstFlowing;
}

/** How many of the marked sources (1 by place, else 0) flow into a mix. */
export function countFlowing({ outcome, sourceCount }: Sends, mixAt: number, marked: Uint8Array): number {
  let count = 0;
  for (let at = 0, cell = mixAt * sourceCount; at < sourceCount; at++, cell++)
    count += (oneWhereItFlows[outcome[cell] ?? 0] ?? 0) & (marked[at] ?? 0);
  return count;
}

/** Start level of a source in a mix in dB; null where nothing flows. */
export function startLevelDb(sends: Sends, sourceAt: number, mixAt: number): number | null {
  if (!flows(sends, sourceAt, mixAt)) return null;
  return sends.levelsDb[sends.levelAt[mixAt * sends.sourceCount + sourceAt] ?? 0] ?? 0;
}

/** Whether a source has one of these outcomes in a mix. */
export function hasOutcome(sends: Sends, sourceAt: number, mixAt: number, outcomes: number): boolean {
  return (outcomes & (1 << (sends.outcome[mixAt * sends.sourceCount + sourceAt] ?? 0))) !== 0;
}

/** Whether a source has one of these outcomes in some mix. */
export function hasOutcomeSomewhere(sends: Sends, sourceAt: number, outcomes: number): boolean {
  return ((sends.outcomesOfSource[sourceAt] ?? 0) & outcomes) !== 0;
}

/** What a cell comes to when its wish does not ask for anything, by the state of the wish. */
const silentCode = new Uint8Array(5);
silentCode[cellState.noWish] = codeOf.noWish;
silentCode[cellState.none] = codeOf.none;
silentCode[cellState.switchedOff] = codeOf.switchedOff;
silentCode[cellState.fohOnly] = codeOf.fohOnly;

/** Mixes that the rule treats alike: those of one kind of device, or made elsewhere. */
const mixGroups = [
  { mixedAt: 'elsewhere', deviceKind: null },
  { mixedAt: 'house desk', deviceKind: 'in-ear' },
  { mixedAt: 'house desk', deviceKind: 'wedge' },
  { mixedAt: 'house desk', deviceKind: null },
] as const;

function mixGroupOf({ mixedAt, deviceKind }: Mix): number {
  if (mixedAt === 'elsewhere') return 0;
  if (deviceKind === null) return 3;
  return deviceKind === 'in-ear' ? 1 : 2;
}

/** The rule for every cell, as if no copy had been chosen for any. */
function settleAll(sheet: ActSheet, copies: readonly CopiesOfSource[], wishes: ResolvedWishes): Uint8Array {
  const { sourceCount, state } = wishes;
  // For each group of mixes and each source what every state of a wish comes to. No pattern of wishes can be guessed by
  // a processor, so each cell is looked up, and nothing is asked of it.
  const codes = new Uint8Array(mixGroups.length * sourceCount * silentCode.length);
  let place = 0;
  for (const mix of mixGroups)
    for (let at = 0; at < sourceCount; at++) {
      const wanted = settleWanted(mix, copies[at] ?? noCopies);
      for (let asked = 0; asked < silentCode.length; asked++, place++)
        codes[place] = asked === cellState.wanted ? wanted : (silentCode[asked] ?? 0);
    }
  const outcome = new Uint8Array(state.length);
  let cell = 0;
  for (const mix of sheet.mixes) {
    let first = mixGroupOf(mix) * sourceCount * silentCode.length;
    for (let at = 0; at < sourceCount; at++, cell++, first += silentCode.length)
      outcome[cell] = codes[first + (state[cell] ?? 0)] ?? 0;
  }
  return outcome;
}

/** The rule for a source that is wanted in a mix, in its order: the first that applies. */
function settleWanted(mix: Pick<Mix, 'mixedAt' | 'deviceKind'>, copies: CopiesOfSource): number {
  if (mix.mixedAt === 'elsewhere') return codeOf.elsewhere;
  const made = purposeOfDevice(mix.deviceKind);
  if (made === 'in-ears' && copies['in-ears'] !== null) return codeOf.inEars;
  if (made === 'wedges' && copies.wedges !== null) return codeOf.wedges;
  if (copies.monitors !== null) return codeOf.monitors;
  return copies.foh === null ? codeOf.noChannel : codeOf.foh;
}

/** Copies that the engineer chose go before the rule, where the mix asks for the source and the copy is there. */
function choose(
  sheet: ActSheet,
  copies: readonly CopiesOfSource[],
  cells: CellDecisions,
  { sourceCount, state }: ResolvedWishes,
  outcome: Uint8Array,
): void {
  for (const [cell, { purpose }] of cells.byCell) {
    if (purpose === undefined || state[cell] !== cellState.wanted) continue;
    if (sheet.mixes[Math.floor(cell / sourceCount)]?.mixedAt === 'elsewhere') continue;
    if (copies[cell % sourceCount]?.[purpose] !== null) outcome[cell] = chosenCode[purpose];
  }
}

/** As wished or decided, held at unity. */
function startLevels(cells: CellDecisions, wishes: ResolvedWishes): Pick<Sends, 'levelsDb' | 'levelAt'> {
  const levelsDb = wishes.levelsDb.map((levelDb) => Math.min(levelDb, unityDb));
  if (cells.byCell.size === 0) return { levelsDb, levelAt: wishes.levelAt };
  const levelAt = wishes.levelAt.slice();
  for (const [cell, decision] of cells.byCell)
    if (decision.levelDb !== undefined)
      levelAt[cell] = levelsDb.push(Math.min(decision.levelDb, unityDb)) - 1;
  return { levelsDb, levelAt };
}
