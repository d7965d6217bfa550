import type { Rig } from '../../core/show/rig.ts';
import { useRowFields } from '../parts/use-row-fields.ts';
import { words } from '../wording/words.ts';
import { FieldGrid } from './field-grid.tsx';
import { isPlaced, type StageThing, stageKinds } from './stage-objects.ts';

type Props = {
  rig: Rig;
  things: readonly StageThing[];
  onChoose: (key: string) => void;
  onPutOn: (thing: StageThing) => void;
};

/** The measures of the stage, what has no place yet, and everything that has one. */
export function PlotList({ rig, things, onChoose, onPutOn }: Props) {
  const field = useRowFields();
  const text = words.stage;
  const unplaced = things.filter((it) => !isPlaced(it));
  return (
    <>
      <p className="quiet">{text.nothingChosen}</p>
      <FieldGrid
        fields={[
          field('rigs', rig, text.stage, 'stageWidthM', text.width, 'number'),
          field('rigs', rig, text.stage, 'stageDepthM', text.depth, 'number'),
        ]}
      />
      <section className="stage-section">
        <h2>{text.unplaced}</h2>
        {unplaced.length === 0 ? (
          <p className="quiet">{text.allPlaced}</p>
        ) : (
          <ul>
            {unplaced.map((thing) => (
              <li key={thing.key} className="stage-unplaced">
                <button type="button" className="plain stage-list-name" onClick={() => onChoose(thing.key)}>
                  {thing.name}
                </button>
                <button type="button" aria-label={text.putOn(thing.name)} onClick={() => onPutOn(thing)}>
                  {text.putOnShort}
                </button>
              </li>
            ))}
          </ul>
        )}
      </section>
      {stageKinds.map((kind) => {
        const placed = things.filter((it) => it.kind === kind).filter(isPlaced);
        if (placed.length === 0) return null;
        return (
          <section key={kind} className="stage-section">
            <h2>{text.kindsMany[kind]}</h2>
            <ul>
              {placed.map(({ key, name, at }) => (
                <li key={key}>
                  <button type="button" className="plain stage-list-name" onClick={() => onChoose(key)}>
                    {name} <span className="quiet">{text.at(at.xM, at.yM)}</span>
                  </button>
                </li>
              ))}
            </ul>
          </section>
        );
      })}
    </>
  );
}
