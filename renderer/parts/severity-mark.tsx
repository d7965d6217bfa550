import type { Finding } from '../../core/derive/derived.ts';
import { type Severity, severities } from '../../core/show/words.ts';
import { words } from '../wording/words.ts';
import './severity-mark.css';

const shapes: Record<Severity, { path: string; sign: string; name: string }> = {
  'must fix': { path: 'M8 1 15.5 14.5H.5Z', sign: '!', name: 'must-fix' },
  'look again': { path: 'M8 .5 15.5 8 8 15.5.5 8Z', sign: '?', name: 'look-again' },
  'know this': { path: 'M8 1a7 7 0 1 0 .01 0Z', sign: 'i', name: 'know-this' },
};

/** Shape, sign and colour of a severity; the word is for who cannot see it. */
export function SeverityMark({ severity, says = true }: { severity: Severity; says?: boolean }) {
  const { path, sign, name } = shapes[severity];
  return (
    <>
      <svg className={`severity severity-${name}`} viewBox="0 0 16 16" aria-hidden="true">
        <path d={path} />
        <text x="8" y={severity === 'must fix' ? 13.2 : 11.8}>
          {sign}
        </text>
      </svg>
      {says && <span className="unseen">{words.severity[severity]}</span>}
    </>
  );
}

/** The most serious of some findings, or null for none. */
export function worstOf(findings: readonly Pick<Finding, 'severity'>[]): Severity | null {
  return severities.find((severity) => findings.some((finding) => finding.severity === severity)) ?? null;
}
