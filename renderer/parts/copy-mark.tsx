import type { Purpose } from '../../core/show/words.ts';
import { words } from '../wording/words.ts';
import './copy-mark.css';

/** Our own shapes: a copy is told by its letter and its outline, the colour only helps. */
const outlines: Record<Purpose, string> = {
  foh: 'M2 2h12v12H2Z',
  monitors: 'M8 1a7 7 0 1 0 .01 0Z',
  wedges: 'M1 14 4.5 2H15v12Z',
  'in-ears': 'M8 1c4 0 6.5 3 6.5 6.5S11 15 8 15 1.5 11 1.5 7.5 4 1 8 1ZM8 0v2',
  parallel: 'M4.5 2H15.5l-4 12H.5Z',
};

export function CopyMark({ purpose, says = false }: { purpose: Purpose; says?: boolean }) {
  const { letter, name } = words.purpose[purpose];
  return (
    <>
      <svg className={`copy-mark copy-mark-${purpose}`} viewBox="0 0 16 16" aria-hidden="true">
        <path d={outlines[purpose]} />
        <text x="8" y="11.9">
          {letter}
        </text>
      </svg>
      {says && <span className="unseen">{name}</span>}
    </>
  );
}
