import type { Purpose } from '../../core/show/words.ts';
import { words } from '../wording/words.ts';
import './copy-mark.css';

/**
 * Our own shapes: a copy is told by its letter and its outline, the colour only helps. One element each, since the
 * mixes show hundreds of them; the letter is no text of the page, since what has a mark says it in words.
 */
export function CopyMark({ purpose, says = false }: { purpose: Purpose; says?: boolean }) {
  const { letter, name } = words.purpose[purpose];
  return (
    <>
      <span className={`copy-mark copy-mark-${purpose}`} data-letter={letter} aria-hidden="true" />
      {says && <span className="unseen">{name}</span>}
    </>
  );
}
