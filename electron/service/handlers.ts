import type { z } from 'zod';
import type { CallName, CallOutput, contract, Push } from '../../core/contract/contract.ts';
import type { Outcome } from '../../core/contract/problem.ts';
import type { ShowDatabase } from '../database/show-database.ts';
import { planDay, stopPlanning } from './day-calls.ts';
import { makeSheets, stopSheets } from './paper-calls.ts';
import { gridOfRider } from './rider-calls.ts';
import { changeShow, openShowInWindow, redo, undo } from './show-calls.ts';

/** What a call may use. */
export type Context = {
  show: ShowDatabase;
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
};
