import { memo, useState } from 'react';
import type { Finding } from '../../core/derive/derived.ts';
import { words } from '../wording/words.ts';
import { SeverityMark } from './severity-mark.tsx';
import './findings-list.css';

/** More than anybody reads at once; the rest is one press away. */
const shownAtFirst = 40;

type Props = { findings: readonly Finding[]; onGo: (finding: Finding) => void };

/** Findings with cause and remedy, the most serious first. Choosing one leads to where it arises. */
export const FindingsList = memo(function FindingsList({ findings, onGo }: Props) {
  const [showsAll, setShowsAll] = useState(false);
  const shown = showsAll ? findings : findings.slice(0, shownAtFirst);
  return (
    <ul className="findings">
      {shown.map((finding) => (
        <li key={`${finding.code} ${finding.cause}`}>
          <button type="button" className="list-button" onClick={() => onGo(finding)}>
            <SeverityMark severity={finding.severity} />
            <span>
              <span className="finding-cause">{finding.cause}</span>
              <span className="finding-remedy">{finding.remedy}</span>
            </span>
          </button>
        </li>
      ))}
      {shown.length < findings.length && (
        <li>
          <button type="button" className="list-button" onClick={() => setShowsAll(true)}>
            {words.mixes.moreFindings(findings.length - shown.length)}
          </button>
        </li>
      )}
    </ul>
  );
});
