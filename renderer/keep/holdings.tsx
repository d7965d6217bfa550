import { words } from '../wording/words.ts';

type Props = {
  /** null: what is looked at holds no days of its own. */
  days: readonly string[] | null;
  acts: readonly string[];
  sourceCount: number;
  mixCount: number;
};

/** What a back-up or a file holds, by name and number. */
export function Holdings({ days, acts, sourceCount, mixCount }: Props) {
  const text = words.keep.copies;
  return (
    <dl className="keep-holds">
      {days && (
        <>
          <dt>{text.days}</dt>
          <dd>{words.keep.list(days)}</dd>
        </>
      )}
      <dt>{text.acts}</dt>
      <dd>{words.keep.list(acts)}</dd>
      <dt>{text.holds}</dt>
      <dd>{text.counts(sourceCount, mixCount)}</dd>
    </dl>
  );
}
