import type { Differences } from '../../core/contract/copies.ts';
import { words } from '../wording/words.ts';

/** Row by row what would come, go and change, or did, with the words before and after. */
export function DifferenceList({
  differences: { rows, count },
  tense,
}: {
  differences: Differences;
  tense: keyof Pick<typeof words.keep.difference, 'would' | 'did'>;
}) {
  const text = words.keep;
  return (
    <ul className="keep-differences">
      {rows.map(({ table, id, kind, what, fields }) => (
        <li key={`${table} ${id}`} className={`is-${kind}`}>
          <span className="keep-kind">{text.difference[tense][kind]}</span>
          <span>
            {what}
            {fields.map(({ field, before, after }) => (
              <span key={field} className="keep-field">
                {kind === 'changed'
                  ? text.difference.field(field, before, after)
                  : text.difference.value(field, kind === 'added' ? after : before)}
              </span>
            ))}
          </span>
        </li>
      ))}
      {count > rows.length && <li className="quiet">{text.more(count - rows.length)}</li>}
    </ul>
  );
}
