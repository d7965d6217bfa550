import { lineReaches } from '../../core/derive/box-reach.ts';
import type { Id } from '../../core/show/rig.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import { keyOfThing } from './stage-objects.ts';

type Props = { open: ActOnScreen; boxId: Id; onChoose: (key: string) => void };

/** Every line of the act that is plugged into a box: how far it is, and whether the box's cables reach it. */
export function BoxReach({ open: { sheet, derived }, boxId, onChoose }: Props) {
  const text = words.stage.boxReach;
  const lines = lineReaches(sheet, derived.plan)
    .filter((it) => it.boxId === boxId)
    .sort((a, b) => (b.apartM ?? -1) - (a.apartM ?? -1));
  return (
    <section className="stage-section">
      <h3>{text.lines}</h3>
      {lines.length === 0 ? (
        <p className="quiet">{text.none}</p>
      ) : (
        <>
          <table className="stage-table">
            <thead>
              <tr>
                <th scope="col">{text.line}</th>
                <th scope="col">{text.far}</th>
                <th scope="col">
                  <span className="unseen">{text.within}</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {lines.map(({ sourceId, apartM, reaches }) => (
                <tr key={sourceId} className={reaches === false ? 'is-too-far' : undefined}>
                  <th scope="row">
                    <button
                      type="button"
                      className="plain"
                      onClick={() => onChoose(keyOfThing('source', sourceId))}
                    >
                      {sheet.sources.find((it) => it.id === sourceId)?.name}
                    </button>
                  </th>
                  <td>{apartM === null ? text.noPlace : apartM.toFixed(1)}</td>
                  <td>{reaches === null ? text.unknown : reaches ? text.within : text.beyond}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <p className="quiet stage-note">{text.straight}</p>
        </>
      )}
    </section>
  );
}
