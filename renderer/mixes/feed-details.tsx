import type { Feed } from '../../core/derive/derived.ts';
import type { Mix, Source } from '../../core/show/act.ts';
import { amounts } from '../../core/show/words.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import { DecisionChoice, DecisionField } from '../parts/decision-field.tsx';
import { levelText } from '../parts/format.ts';
import { whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { readTypedCell } from './cell-text.ts';
import { cellLabel, changeOf, chooseCopy, putFeedBack, setAmount, setLevel, takeOut } from './mix-changes.ts';
import { copiesOf } from './next-copy.ts';

/** What one mix takes of one source: which copy, how loud, why, and who decided it. */
export function FeedDetails({
  open,
  source,
  mix,
  feed,
}: {
  open: ActOnScreen;
  source: Source;
  mix: Mix;
  feed: Feed;
}) {
  const { change } = useHere();
  const { sheet } = open;
  const text = words.mixes;
  const place = { mixId: mix.id, sourceId: source.id };
  const label = (verb: string) => `${verb}: ${cellLabel(sheet, place)}`;
  const decision = (about: 'feed' | 'level') =>
    sheet.decisions.find((it) => it.about === about && it.mixId === mix.id && it.sourceId === source.id);
  const decidedCopy = decision('feed');
  const decidedLevel = decision('level');
  const wish = sheet.wishes.find((it) => it.id === feed.wishId);

  const commitLevel = (typed: string): string | null => {
    const cell = readTypedCell(typed);
    if (cell.of === 'refused') return cell.why;
    if (cell.of === 'level') change(changeOf(label(text.set), setLevel(sheet, place, feed, cell.levelDb)));
    else if (cell.of === 'amount') change(changeOf(label(text.set), setAmount(sheet, place, cell.amount)));
    else change(changeOf(label(text.takeOut), takeOut(sheet, [place])));
    return null;
  };

  return (
    <section className="details-part">
      <h2>{text.feed(source.name, whoHears(sheet, mix))}</h2>
      <p>{feed.why}</p>
      {wish && wish.words !== '' && <p className="quiet">{text.asWritten(wish.words)}</p>}
      <DecisionChoice
        label={text.copyHere}
        value={decidedCopy?.about === 'feed' ? decidedCopy.purpose : null}
        proposed={feed.purpose ? words.purpose[feed.purpose].name : words.mixes.notFed}
        options={copiesOf(open, source.id).map((purpose) => ({
          value: purpose,
          label: words.purpose[purpose].name,
        }))}
        onChoose={(value) =>
          change(
            changeOf(
              label(text.copy),
              chooseCopy(sheet, place, copiesOf(open, source.id).find((it) => it === value) ?? null),
            ),
          )
        }
      />
      <DecisionField
        label={text.level}
        decided={decidedLevel !== undefined}
        onPutBack={() => change(changeOf(label(text.putBack), putFeedBack(sheet, place)))}
      >
        {(id) => (
          <CheckedField id={id} value={feed.purpose ? levelText(feed.levelDb) : ''} onCommit={commitLevel} />
        )}
      </DecisionField>
      <div className="decision">
        <label htmlFor="wish-amount">{text.amount}</label>
        <select
          id="wish-amount"
          value={feed.amount ?? ''}
          onChange={({ target }) => {
            const amount = amounts.find((it) => it === target.value);
            if (amount) change(changeOf(label(text.set), setAmount(sheet, place, amount)));
          }}
        >
          {feed.amount === null && (
            <option value="">{wish?.levelDb != null ? `${levelText(wish.levelDb)} dB` : text.noWish}</option>
          )}
          {amounts.map((amount) => (
            <option key={amount}>{amount}</option>
          ))}
        </select>
      </div>
    </section>
  );
}
