import { useId } from 'react';
import { LabelForm } from '../../core/sheets/label-form.ts';
import type { SheetOptions } from '../../core/sheets/sheets.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import { textOfValue, withSchemaField } from '../parts/row-fields.ts';
import { words } from '../wording/words.ts';
import type { SheetChoice } from './sheet-choice.ts';

type FieldName = keyof typeof words.paper.labels.fields;
type Props = {
  choice: SheetChoice;
  options: SheetOptions;
  isBusy: boolean;
  onOptions: (options: SheetOptions) => void;
};

const fieldsOf: Record<LabelForm['is'], readonly FieldName[]> = {
  strip: ['pitchMm', 'heightMm', 'channelsPerStrip'],
  sheet: [
    'labelWidthMm',
    'labelHeightMm',
    'columns',
    'rows',
    'leftMm',
    'topMm',
    'gapAcrossMm',
    'gapDownMm',
    'skip',
  ],
};

/** What the labels are stuck on, by the measures of the tape or the sheet at hand. */
export function LabelFields({ choice, options, isBusy, onOptions }: Props) {
  const id = useId();
  const text = words.paper.labels;
  const which = formOfChoice(choice);
  if (!which) return null;
  const form: LabelForm = options[which];
  const measures: Partial<Record<FieldName, unknown>> = form;
  const take = (next: LabelForm) => onOptions({ ...options, [which]: next });
  return (
    <div className="paper-tools-row paper-labels">
      <label>
        {text.on}{' '}
        <select
          value={form.is}
          disabled={isBusy}
          onChange={({ target }) => take(LabelForm.parse({ is: target.value }))}
        >
          {Object.entries(text.forms).map(([is, name]) => (
            <option key={is} value={is}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {fieldsOf[form.is].map((name) => (
        <span key={name} className="paper-label-field" data-field={name}>
          <label htmlFor={`${id} ${name}`}>{text.fields[name]}</label>
          <CheckedField
            id={`${id} ${name}`}
            value={textOfValue(measures[name])}
            placeholder={name === 'channelsPerStrip' ? text.asMany : ''}
            onCommit={(typed) => {
              const kind = name === 'channelsPerStrip' ? 'optional number' : 'number';
              const outcome = withSchemaField(LabelForm, form, name, kind, typed);
              if ('why' in outcome) return outcome.why;
              take(outcome.row);
              return null;
            }}
          />
        </span>
      ))}
      {which === 'lineLabels' && (
        <label>
          <input
            type="checkbox"
            checked={options.lineColours}
            disabled={isBusy}
            onChange={({ target }) => onOptions({ ...options, lineColours: target.checked })}
          />{' '}
          {text.colours}
        </label>
      )}
    </div>
  );
}

function formOfChoice(choice: SheetChoice): 'channelLabels' | 'lineLabels' | null {
  if (choice === 'channel labels') return 'channelLabels';
  return choice === 'line labels' ? 'lineLabels' : null;
}
