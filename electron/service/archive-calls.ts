import { refuse } from '../../core/contract/problem.ts';
import type { Handler } from './handlers.ts';

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

export const keepInArchive: Handler<'archive.keep'> = ({ show, copies }, { actId }) => {
  const kept = show.keepInArchive(actId);
  if (!kept.ok) return kept;
  if (!kept.value)
    return refuse('not there', 'This act is not in the show any more.', 'Look at the show as it is now.');
  // No row of the show was written, so no copy would follow by itself.
  void copies?.make('by itself');
  return { ok: true, value: {} };
};

export const removeFromArchive: Handler<'archive.remove'> = ({ show, copies }, { actId }) => {
  const removed = show.removeFromArchive(actId);
  if (!removed.ok) return removed;
  if (!removed.value)
    return refuse('not there', 'This act is not in the archive.', 'Look for it again by its name.');
  void copies?.make('by itself');
  return { ok: true, value: {} };
};

export const putBackIntoArchive: Handler<'archive.putBack'> = ({ show, copies }, { actId }) => {
  const back = show.putBackIntoArchive(actId);
  if (!back.ok) return back;
  if (!back.value)
    return refuse(
      'not there',
      'This act is not among those that were removed.',
      'An act that was removed more than a month ago may be gone; an older back-up copy may still have it.',
    );
  void copies?.make('by itself');
  return { ok: true, value: {} };
};
