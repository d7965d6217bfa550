import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { Context, Handler } from './handlers.ts';

export const findInArchive: Handler<'archive.find'> = ({ show }, { text, most }) => ({
  ok: true,
  value: {
    found: show.findInArchive(text, most),
    actCount: show.archivedCount(),
    removed: show.removedFromArchive(),
  },
});

export const readArchive: Handler<'archive.read'> = ({ show }, { actId }) => {
  const read = show.archivedAct(actId);
  if (!read.ok) return read;
  if (read.value) return { ok: true, value: read.value };
  return refuse('not there', 'This act is not in the archive.', 'Look for it again by its name.');
};

export const keepInArchive: Handler<'archive.keep'> = ({ show, copies }, { actId }) =>
  written(
    copies,
    show.keepInArchive(actId),
    'This act is not in the show any more.',
    'Look at the show as it is now.',
  );

export const removeFromArchive: Handler<'archive.remove'> = ({ show, copies }, { actId }) =>
  written(
    copies,
    show.removeFromArchive(actId),
    'This act is not in the archive.',
    'Look for it again by its name.',
  );

export const putBackIntoArchive: Handler<'archive.putBack'> = ({ show, copies }, { actId }) =>
  written(
    copies,
    show.putBackIntoArchive(actId),
    'This act is not among those that were removed.',
    'An act that was removed more than a month ago may be gone; an older back-up copy may still have it.',
  );

/** What was written into the archive is no row of the show, so no copy would follow by itself. */
function written(
  copies: Context['copies'],
  done: Outcome<boolean>,
  what: string,
  todo: string,
): Outcome<Record<string, never>> {
  if (!done.ok) return done;
  if (!done.value) return refuse('not there', what, todo);
  void copies?.make('by itself');
  return { ok: true, value: {} };
}
