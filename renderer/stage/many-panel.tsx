import type { StagePlace } from '../../core/show/stage-place.ts';
import type { LabelledText } from '../parts/labelled-field.tsx';
import { words } from '../wording/words.ts';
import { FieldGrid } from './field-grid.tsx';
import type { StageThing } from './stage-objects.ts';

type Props = {
  things: readonly StageThing[];
  onMove: (by: StagePlace) => void;
  onMirror: () => void;
  onTakeOff: () => void;
  onChoose: (key: string) => void;
};

const number = /^[+-]?\d{1,3}(?:[.,]\d+)?$/;

/** Several chosen things: how far to shift them, and each of them by name. */
export function ManyPanel({ things, onMove, onMirror, onTakeOff, onChoose }: Props) {
  const text = words.stage;
  const shift = (label: string, wayOf: (m: number) => StagePlace): LabelledText => ({
    label,
    value: '',
    onCommit: (typed) => {
      const plain = typed.trim().replace('−', '-');
      if (!number.test(plain)) return words.field.noNumber(typed);
      onMove(wayOf(Number(plain.replace(',', '.'))));
      return null;
    },
  });
  return (
    <>
      <h2>{text.chosen(things.length)}</h2>
      <FieldGrid
        key={JSON.stringify(things.map(({ key, at }) => [key, at]))}
        fields={[
          shift(text.fields.shiftX, (xM) => ({ xM, yM: 0 })),
          shift(text.fields.shiftY, (yM) => ({ xM: 0, yM })),
        ]}
      />
      <p className="stage-turns">
        <button type="button" onClick={onMirror}>
          {text.mirror}
        </button>
        <button type="button" onClick={onTakeOff}>
          {text.takeOff}
        </button>
      </p>
      <ul className="stage-section">
        {things.map(({ key, name, at }) => (
          <li key={key}>
            <button type="button" className="plain stage-list-name" onClick={() => onChoose(key)}>
              {name} <span className="quiet">{at ? text.at(at.xM, at.yM) : text.noPlace}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
