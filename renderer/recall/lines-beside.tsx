import type { LineInBoth } from '../../core/archive/side-by-side.ts';
import type { CheckLine } from '../../core/run/lines-to-check.ts';
import { CopyMark } from '../parts/copy-mark.tsx';
import { words } from '../wording/words.ts';
import { DifferMark } from './differ-mark.tsx';

/** The lines of a past act: where each was to come in, where it did, and what was heard of it. */
export function LinesBeside({ lines }: { lines: readonly LineInBoth[] }) {
  const text = words.recall;
  if (lines.length === 0) return null;
  return (
    <table className="recall-table">
      <caption>{text.lines}</caption>
      <thead>
        <tr>
          <th scope="col">{text.source}</th>
          <th scope="col">{text.planned}</th>
          <th scope="col">{text.ran}</th>
          <th scope="col" className="recall-found">
            {text.lineCheck}
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ source, planned, ran, differs, result }) => (
          <tr key={source.id} className={differs ? 'is-different' : undefined}>
            <th scope="row">{source.name}</th>
            <td>
              <LineWords line={planned} />
            </td>
            <td>
              {differs && <DifferMark />}
              <LineWords line={ran} />
            </td>
            <td>
              {result ? (
                <span className={`recall-found line-check-${result.found}`}>
                  <span aria-hidden="true">{words.show.signs[result.found]}</span>{' '}
                  {words.show.found[result.found]}
                </span>
              ) : (
                <span className="quiet recall-found">{text.notHeard}</span>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function LineWords({ line }: { line: CheckLine | null }) {
  if (!line) return <span>{words.recall.notThere}</span>;
  const { source, socketName, channels, phantomOn } = line;
  const mic = source.pickUpModel || (source.pickUp && words.show.pickUps[source.pickUp]);
  return (
    <span className="recall-line">
      <strong>{socketName || words.common.nothing}</strong>
      {channels.map(({ purpose, channel }) => (
        <span key={purpose}>
          {channel} <CopyMark purpose={purpose} says />
        </span>
      ))}
      {mic && <span>{mic}</span>}
      {phantomOn && <span>{words.recall.phantom}</span>}
    </span>
  );
}
