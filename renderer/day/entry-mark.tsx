import type { Entry } from '../../core/plan/day/problem.ts';
import './entry-mark.css';

/** Work in the changeover is a full wedge, work ahead an empty one, what stays a bar: shapes before colours. */
const shapes: Record<Entry, string> = {
  hot: 'M3 1.5 14 8 3 14.5Z',
  cold: 'M3.8 3 12.4 8 3.8 13Z',
  kept: 'M6.5 1h3v14h-3Z',
};

export function EntryMark({ entry }: { entry: Entry }) {
  return (
    <svg className={`entry-mark is-${entry}`} viewBox="0 0 16 16" aria-hidden="true">
      <path d={shapes[entry]} />
    </svg>
  );
}

export function LockMark() {
  return (
    <svg className="entry-mark is-lock" viewBox="0 0 16 16" aria-hidden="true">
      <path d="M3 7.2h10v7.3H3Z" />
      <path className="is-line" d="M5.2 7V4.6a2.8 2.8 0 0 1 5.6 0V7" />
    </svg>
  );
}

export function MoveMark() {
  return (
    <svg className="entry-mark is-move" viewBox="0 0 16 16" aria-hidden="true">
      <path d="M8 .8 15.2 8 8 15.2.8 8Z" />
    </svg>
  );
}
