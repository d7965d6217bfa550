import { words } from '../wording/words.ts';

/** Says that the run differs from the plan, by its shape and, for who cannot see it, by its word. */
export function DifferMark() {
  return (
    <span className="differ-mark">
      <span aria-hidden="true">≠</span>
      <span className="unseen">{words.recall.differs}: </span>
    </span>
  );
}
