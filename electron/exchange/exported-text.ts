import { documentOfAct } from '../../core/show/exchange.ts';
import type { Id } from '../../core/show/rig.ts';
import { documentFromShow, type Show } from '../../core/show/show.ts';

/** The whole show (null) or an act as a file: its name and its text. Null where there is no such act. */
export function exportedText(show: Show, actId: Id | null): { name: string; text: string } | null {
  const document = actId === null ? documentFromShow(show) : documentOfAct(show, actId);
  if (!document) return null;
  const name = actId === null ? 'show' : (show.acts.get(actId)?.name ?? 'act');
  return {
    name: `${safeName(name)}.${document.format}.json`,
    text: `${JSON.stringify(document, null, 1)}\n`,
  };
}

/** Letters and figures of any script; every other sign may mean something to a file system. */
function safeName(name: string): string {
  const safe = name
    .normalize('NFC')
    .replace(/[^\p{L}\p{N} _-]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return safe.slice(0, 80) || 'act';
}
