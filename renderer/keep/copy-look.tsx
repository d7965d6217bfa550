import type { CopyInList, CopyPreview } from '../../core/contract/copies.ts';
import { words } from '../wording/words.ts';
import { AskFirst } from './ask-first.tsx';
import { DifferenceList } from './difference-list.tsx';
import { Holdings } from './holdings.tsx';
import { ageText, whenText } from './times.ts';

/** What a back-up holds, what restoring it would change, and the question before it is done. */
export function CopyLook({
  preview,
  onRestore,
}: {
  preview: CopyPreview | null;
  onRestore: (copy: CopyInList) => void;
}) {
  const text = words.keep.copies;
  if (!preview)
    return (
      <section className="keep-column quiet">
        <p>{text.choose}</p>
      </section>
    );
  const { copy, differences } = preview;
  const when = whenText(copy.madeAt);
  return (
    <section className="keep-column" aria-label={text.previewTitle(when)}>
      <h3>
        {text.previewTitle(when)} <span className="quiet">{ageText(copy.madeAt)}</span>
      </h3>
      <Holdings
        days={preview.days}
        acts={preview.acts}
        sourceCount={preview.sourceCount}
        mixCount={preview.mixCount}
      />
      {differences.count === 0 ? (
        <p>{text.same}</p>
      ) : (
        <>
          <AskFirst
            label={text.restore}
            question={text.sure(differences.count, when)}
            yes={text.yes}
            no={text.no}
            onYes={() => onRestore(copy)}
          />
          <p>{text.wouldChange(differences.count)}</p>
          <DifferenceList differences={differences} tense="would" />
        </>
      )}
    </section>
  );
}
