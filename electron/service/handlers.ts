import type { z } from 'zod';
import type { CallName, CallOutput, contract, Push } from '../../core/contract/contract.ts';
import type { Outcome, Problem } from '../../core/contract/problem.ts';
import type { CopyKeeper } from '../copies/copy-keeper.ts';
import type { FoundDrive } from '../copies/found-drives.ts';
import type { WorkingShow } from '../database/sheltered-show.ts';
import {
  findInArchive,
  keepInArchive,
  putBackIntoArchive,
  readArchive,
  removeFromArchive,
} from './archive-calls.ts';
import { chooseFolder, listCopies, makeCopy, previewCopy, restoreCopy } from './copy-calls.ts';
import { planDay, stopPlanning } from './day-calls.ts';
import { exportPart, importPart, lookAtPart } from './exchange-calls.ts';
import { makeSheets, stopSheets } from './paper-calls.ts';
import { gridOfRider } from './rider-calls.ts';
import { changeShow, openShowInWindow, redo, undo } from './show-calls.ts';
import { compareStates, keepState, listStates, restoreState } from './state-calls.ts';

/** What the program around the service has to give. */
export type Surroundings = {
  /** Null where the show keeps no copies. */
  copies: CopyKeeper | null;
  /** Asks for a folder in a dialog of the system, null where none was chosen; null where there is no such dialog. */
  chooseFolder: (() => Promise<string | null>) | null;
  /** The sticks and shares that are there now, for a second folder. */
  findDrives: () => Promise<FoundDrive[]>;
  /** What happened when the show was opened and a window should say. */
  notice: Problem | null;
};

/** What a call may use. */
export type Context = Surroundings & {
  show: WorkingShow;
  host: 'electron' | 'browser';
  /** Tells the window that calls. */
  tellCaller(push: Push): void;
  /** Tells every window but the one that calls. */
  tellOthers(push: Push): void;
  /** Aborted when the window that calls has gone: nobody waits for the answer any more. */
  gone: AbortSignal;
};

export type Handler<C extends CallName> = (
  context: Context,
  input: z.output<(typeof contract)[C]['in']>,
) => Outcome<CallOutput<C>> | Promise<Outcome<CallOutput<C>>>;

/** The function of every call of the contract; a call without one does not compile. */
export const handlers: { [C in CallName]: Handler<C> } = {
  'show.open': openShowInWindow,
  'show.change': changeShow,
  'show.undo': undo,
  'show.redo': redo,
  'rider.grid': gridOfRider,
  'paper.make': makeSheets,
  'paper.stop': stopSheets,
  'day.plan': planDay,
  'day.stop': stopPlanning,
  'copies.list': listCopies,
  'copies.make': makeCopy,
  'copies.preview': previewCopy,
  'copies.restore': restoreCopy,
  'copies.choose': chooseFolder,
  'states.keep': keepState,
  'states.list': listStates,
  'states.compare': compareStates,
  'states.restore': restoreState,
  'exchange.export': exportPart,
  'exchange.look': lookAtPart,
  'exchange.import': importPart,
  'archive.find': findInArchive,
  'archive.read': readArchive,
  'archive.keep': keepInArchive,
  'archive.remove': removeFromArchive,
  'archive.putBack': putBackIntoArchive,
};
