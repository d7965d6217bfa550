import { z } from 'zod';
import { Change } from '../../core/show/change.ts';
import type { UnsentShelf } from './show-store.ts';

const key = 'foldbook.unsent';
const Kept = z.object({ file: z.string(), changes: z.array(Change) });

/** Keeps unsent changes in the page's own storage, so that a reload before they are durable loses nothing. */
export const unsentShelf: UnsentShelf = {
  load(file) {
    const text = localStorage.getItem(key);
    if (text === null) return [];
    const kept = Kept.safeParse(parsed(text));
    return kept.success && kept.data.file === file ? kept.data.changes : [];
  },
  save(file, changes) {
    if (changes.length === 0) localStorage.removeItem(key);
    else keep(JSON.stringify({ file, changes }));
  },
};

/** A change larger than the page's storage is kept in the window alone; an older copy of it would only mislead. */
function keep(text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    localStorage.removeItem(key);
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
