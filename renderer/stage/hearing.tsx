import { feedbackCaution, openMicrophonesDb } from '../../core/acoustics/feedback.ts';
import { rejectionToCountOnDb } from '../../core/acoustics/rejection.ts';
import { type NearPair, nearPairs, nearWedgeM } from '../../core/derive/stage-pickup.ts';
import { mixNumber } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import { keyOfThing, type StageThing } from './stage-objects.ts';

/** No microphone on a stage rejects more: the figure would only say how exactly the formula can be reckoned. */
const nearNullDb = 40;

type Props = { open: ActOnScreen; thing: StageThing; onChoose: (key: string) => void };

/** What a wedge does to every open microphone near it, or every wedge near it to a microphone. An estimate. */
export function Hearing({ open: { sheet }, thing, onChoose }: Props) {
  const text = words.stage.hearing;
  const isWedge = thing.kind === 'wedge';
  const pairs = nearPairs(sheet).filter((it) => (isWedge ? it.mixId : it.sourceId) === thing.id);
  const other = ({ sourceId, mixId }: NearPair) =>
    isWedge
      ? { key: keyOfThing('source', sourceId), name: sheet.sources.find((it) => it.id === sourceId)?.name }
      : { key: keyOfThing('wedge', mixId), name: words.stage.wedgeLabel(mixNumber(sheet, mixId), 1) };
  return (
    <section className="stage-section">
      <h3>{isWedge ? text.ofWedge : text.ofLine}</h3>
      {pairs.length === 0 ? (
        <p className="quiet">{isWedge ? text.none(nearWedgeM) : text.noneOfWedges(nearWedgeM)}</p>
      ) : (
        <>
          <table className="stage-table">
            <thead>
              <tr>
                <th scope="col">{isWedge ? text.microphone : text.wedge}</th>
                <th scope="col">{text.far}</th>
                <th scope="col">{text.off}</th>
                <th scope="col">{text.rejects}</th>
              </tr>
            </thead>
            <tbody>
              {pairs.map((pair) => {
                const { key, name } = other(pair);
                return (
                  <tr key={key}>
                    <th scope="row">
                      <button type="button" className="plain" onClick={() => onChoose(key)}>
                        {name}
                      </button>
                    </th>
                    <td>{pair.apartM.toFixed(1)}</td>
                    <PickupCells pair={pair} />
                  </tr>
                );
              })}
            </tbody>
          </table>
          <Cautions pairs={pairs} isWedge={isWedge} />
        </>
      )}
    </section>
  );
}

function PickupCells({ pair: { pickup } }: { pair: NearPair }) {
  const text = words.stage.hearing;
  if (!pickup)
    return (
      <td colSpan={2} className="quiet">
        {text.unknown}
      </td>
    );
  const rejects = -pickup.responseDb;
  const isInNull = rejects > nearNullDb;
  return (
    <>
      <td>{words.stage.degrees(pickup.offAxisDegrees)}</td>
      <td>{isInNull ? text.inNull : text.rejection((rejects + 0).toFixed(1))}</td>
    </>
  );
}

/** What stands beside the figures: how they were reckoned, and that they clear nothing. */
function Cautions({ pairs, isWedge }: { pairs: readonly NearPair[]; isWedge: boolean }) {
  const text = words.stage.hearing;
  const caution = pairs.find((it) => it.pickup)?.pickup?.caution;
  const most = rejectionToCountOnDb({ responseDb: -Infinity });
  return (
    <div className="stage-caution">
      <p>
        <strong>{text.estimate}</strong> {feedbackCaution}
      </p>
      {isWedge && pairs.length > 1 && (
        <p>{text.manyOpen(pairs.length, openMicrophonesDb(pairs.length).toFixed(1))}</p>
      )}
      {caution && (
        <p className="quiet">
          {text.assumed} {caution} {text.countOn(`${most}`)}
        </p>
      )}
    </div>
  );
}
