import { randomUUID } from 'node:crypto';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import type { BringBack } from '../../core/show/bring-back.ts';
import { changeOfImport } from '../../core/show/exchange.ts';
import type { Show } from '../../core/show/show.ts';
import { exchangeOfText } from '../exchange/exchange-of-text.ts';
import { exportedText } from '../exchange/exported-text.ts';
import { changeAfterCopy } from './copy-calls.ts';
import { toldDifferences } from './differences.ts';
import type { Handler } from './handlers.ts';

export const exportPart: Handler<'exchange.export'> = ({ show }, { actId }) => {
  const exported = exportedText(show.read(), actId);
  if (exported) return { ok: true, value: exported };
  return refuse('not there', 'This act is not in the show any more.', 'Look at the show as it is now.');
};

export const lookAtPart: Handler<'exchange.look'> = ({ show }, { text, dayId }) => {
  const read = exchangeOfText('The file', text);
  if (!read.ok) return read;
  const document = read.value;
  const now = show.read();
  const there = new Set([...now.acts.values()].map(({ name }) => sameName(name)));
  const beside = changeOfImport(now, document, { how: 'beside', dayId }, randomUUID);
  const replace = changeOfImport(now, document, { how: 'replace' }, randomUUID);
  return {
    ok: true,
    value: {
      holds: document.format === 'foldbook-act' ? 'act' : 'show',
      days: document.days.map(({ name }) => name),
      acts: document.acts.map(({ name }) => name),
      sourceCount: document.sources.length,
      mixCount: document.mixes.length,
      alreadyThere: document.acts.map(({ name }) => name).filter((name) => there.has(sameName(name))),
      beside: beside && { rowCount: beside.change.put.length, leftOut: beside.leftOut },
      replace: replace && { differences: toldDifferences(now, applyChange(now, replace.change)) },
    },
  };
};

const sameName = (name: string) => name.trim().toLocaleLowerCase('und');

export const importPart: Handler<'exchange.import'> = async (context, { text, way }) => {
  const read = exchangeOfText('The file', text);
  if (!read.ok) return read;
  const document = read.value;
  const changeOf = (now: Show): Outcome<BringBack> => {
    const brought = changeOfImport(now, document, way, randomUUID);
    if (brought) return { ok: true, value: brought };
    return refuse(
      'wrong request',
      'An act needs a day of this show to come to, and cannot replace a whole show.',
      'Choose the day it plays on.',
    );
  };
  // What cannot come in needs no copy.
  const possible = changeOf(context.show.read());
  return possible.ok ? changeAfterCopy(context, changeOf) : possible;
};
