import { memo, useState } from 'react';
import type { Finding } from '../../core/derive/derived.ts';
import { useLater } from '../state/later.ts';
import { words } from '../wording/words.ts';
import { SeverityMark } from './severity-mark.tsx';
import './findings-list.css';

/** More than anybody reads at once; the rest is one press away. */
const shownAtFirst = 40;
/** More than a panel shows without scrolling on a laptop; those below follow a moment later. */
const inSight = 12;

type Props = { findings: readonly Finding[]; onGo: (finding: Finding) => void };

/** Findings with cause and remedy, the most serious first. Choosing one leads to where it arises. */
export const FindingsList = memo(function FindingsList({ findings, onGo }: Props) {
  const [showsAll, setShowsAll] = useState(false);
  const earlier = useLater(findings);
  const most = showsAll ? findings.length : Math.min(shownAtFirst, findings.length);
  const shown = [...findings.slice(0, inSight), ...earlier.slice(inSight, most)];
  const hidden = findings.length - most;
  return (
    <ul className="findings">
      {shown.map((finding, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: another act's findings are written into the lines that are there.
        <li key={place}>
          <button type="button" className="list-button" onClick={() => onGo(finding)}>
            <SeverityMark severity={finding.severity} />
            <span>
              <span className="finding-cause">{finding.cause}</span>
              <span className="finding-remedy">{finding.remedy}</span>
            </span>
          </button>
        </li>
      ))}
      {hidden > 0 && (
        <li>
          <button type="button" className="list-button" onClick={() => setShowsAll(true)}>
            {words.mixes.moreFindings(hidden)}
          </button>
        </li>
      )}
    </ul>
  );
});
