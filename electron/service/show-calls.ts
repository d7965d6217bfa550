import { basename } from 'node:path';
import type { Changed } from '../../core/contract/contract.ts';
import type { Outcome } from '../../core/contract/problem.ts';
import { documentFromShow } from '../../core/show/show.ts';
import type { Context, Handler } from './handlers.ts';

export const openShowInWindow: Handler<'show.open'> = ({ show, host, notice }) => ({
  ok: true,
  value: {
    show: documentFromShow(show.read()),
    standing: show.standing(),
    file: basename(show.path),
    host,
    ...(notice ? { notice } : {}),
  },
});

export const changeShow: Handler<'show.change'> = (context, { change }) => {
  const outcome = context.show.change(change);
  if (!outcome.ok) return outcome;
  const standing = outcome.value;
  context.tellOthers({ push: 'changed', changed: { change, standing } });
  return { ok: true, value: { standing } };
};

export const undo: Handler<'show.undo'> = (context) => tellChanged(context, context.show.undo());

export const redo: Handler<'show.redo'> = (context) => tellChanged(context, context.show.redo());

function tellChanged(context: Context, outcome: Outcome<Changed>): Outcome<Changed> {
  if (outcome.ok) context.tellOthers({ push: 'changed', changed: outcome.value });
  return outcome;
}
