import type { Finding } from '../../core/derive/derived.ts';
import { SeverityMark } from './severity-mark.tsx';
import './findings-list.css';

/** Findings with cause and remedy. Choosing one leads to where it arises. */
export function FindingsList({
  findings,
  onGo,
}: {
  findings: readonly Finding[];
  onGo: (finding: Finding) => void;
}) {
  return (
    <ul className="findings">
      {findings.map((finding) => (
        <li key={`${finding.code} ${finding.cause}`}>
          <button type="button" onClick={() => onGo(finding)}>
            <SeverityMark severity={finding.severity} />
            <span>
              <span className="finding-cause">{finding.cause}</span>
              <span className="finding-remedy">{finding.remedy}</span>
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
