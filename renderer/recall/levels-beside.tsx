import type { LevelInBoth } from '../../core/archive/side-by-side.ts';
import { levelText } from '../parts/format.ts';
import { words } from '../wording/words.ts';
import { DifferMark } from './differ-mark.tsx';

/** What one mix was to hold, and what it held at the end, the loudest first. */
export function LevelsBeside({ title, levels }: { title: string; levels: readonly LevelInBoth[] }) {
  const text = words.recall;
  const said = (level: LevelInBoth['ran']) =>
    level === null ? text.notInMix : text.db(levelText(level.levelDb));
  return (
    <table className="recall-table">
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{text.source}</th>
          <th scope="col">{text.planned}</th>
          <th scope="col">{text.ran}</th>
        </tr>
      </thead>
      <tbody>
        {levels.map(({ source, planned, ran, differs }) => (
          <tr key={source.id} className={differs ? 'is-different' : undefined}>
            <th scope="row">{source.name}</th>
            <td className="recall-level">{said(planned)}</td>
            <td className="recall-level">
              {differs && <DifferMark />}
              {said(ran)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
