import { useState } from 'react';
import type { CopyInList, CopyPreview } from '../../core/contract/copies.ts';
import { words } from '../wording/words.ts';
import { AreYouSure } from './are-you-sure.tsx';
import { DifferenceList } from './difference-list.tsx';
import { ageText, whenText } from './times.ts';

/** What a back-up holds, what restoring it would change, and the question before it is done. */
export function CopyLook({
  preview,
  onRestore,
}: {
  preview: CopyPreview | null;
  onRestore: (copy: CopyInList) => void;
}) {
  const [isAsked, setIsAsked] = useState(false);
  const text = words.keep.copies;
  if (!preview)
    return (
      <section className="keep-column quiet">
        <p>{text.choose}</p>
      </section>
    );
  const { copy, days, acts, sourceCount, mixCount, differences } = preview;
  const when = whenText(copy.madeAt);
  return (
    <section className="keep-column" aria-label={text.previewTitle(when)}>
      <h3>
        {text.previewTitle(when)} <span className="quiet">{ageText(copy.madeAt)}</span>
      </h3>
      <dl className="keep-holds">
        <dt>{text.days}</dt>
        <dd>{words.keep.list(days)}</dd>
        <dt>{text.acts}</dt>
        <dd>{words.keep.list(acts)}</dd>
        <dt>{text.holds}</dt>
        <dd>{text.counts(sourceCount, mixCount)}</dd>
      </dl>
      {differences.count === 0 ? (
        <p>{text.same}</p>
      ) : (
        <>
          {isAsked ? (
            <AreYouSure
              question={text.sure(differences.count, when)}
              yes={text.yes}
              no={text.no}
              onYes={() => {
                setIsAsked(false);
                onRestore(copy);
              }}
              onNo={() => setIsAsked(false)}
            />
          ) : (
            <p>
              <button type="button" onClick={() => setIsAsked(true)}>
                {text.restore}
              </button>
            </p>
          )}
          <p>{text.wouldChange(differences.count)}</p>
          <DifferenceList differences={differences} tense="would" />
        </>
      )}
    </section>
  );
}
