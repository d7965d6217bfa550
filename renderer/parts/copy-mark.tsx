import { type Purpose, purposes } from '../../core/show/words.ts';
import { words } from '../wording/words.ts';
import './copy-mark.css';

/**
 * Our own shapes: a copy is told by its letter and its outline, the colour only helps. One element each, since the
 * mixes show hundreds of them; the letter is no text of the page, since what has a mark says it in words.
 */
export function CopyMark({ purpose, says = false }: { purpose: Purpose; says?: boolean }) {
  return (
    <>
      <span className={`copy-mark copy-${purpose}`} aria-hidden="true" />
      {says && <span className="unseen">{words.purpose[purpose].name}</span>}
    </>
  );
}

/** The classes of an element that has the mark before its text. */
export const markBefore = (purpose: Purpose): string => `copy-mark-before copy-${purpose}`;

/** The letters for the style sheet, which draws them: told once, not by every mark. */
export function copyLetters(): string {
  const letters = purposes.map((purpose) => `--copy-letter-${purpose}:"${words.purpose[purpose].letter}"`);
  return `:root{${letters.join(';')}}`;
}
