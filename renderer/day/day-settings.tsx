import { useId } from 'react';
import type { Day } from '../../core/show/act.ts';
import { put } from '../../core/show/change.ts';
import type { Rig } from '../../core/show/rig.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import { type FieldKind, textOfValue, withField } from '../parts/row-fields.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** What is true of the whole day, and what the planner keeps to. */
export function DaySettings({ day }: { day: Day }) {
  const { show, change } = useHere();
  const text = words.day;
  const rig = show.rigs.get(day.rigId);
  const setRig = (label: string, row: Rig) =>
    change({
      label: words.field.changed(label, row.name).slice(0, 200),
      put: [put('rigs', row)],
      remove: [],
    });
  const dayField = (field: 'crewSize' | 'changeoverMinutes' | 'keepUnlessGain', kind: FieldKind) => (
    <Setting
      label={text[field]}
      value={textOfValue(day[field])}
      onCommit={(typed) => {
        const outcome = withField('days', day, field, kind, typed);
        if ('why' in outcome) return outcome.why;
        change({
          label: words.field.changed(text[field], day.name).slice(0, 200),
          put: [put('days', outcome.row)],
          remove: [],
        });
        return null;
      }}
    />
  );
  return (
    <section className="day-settings">
      <h2>{text.settings}</h2>
      {dayField('crewSize', 'number')}
      {dayField('changeoverMinutes', 'number')}
      {rig && (
        <Setting
          label={text.spareVocalLines}
          value={textOfValue(rig.spareVocalLines)}
          onCommit={(typed) => {
            const outcome = withField('rigs', rig, 'spareVocalLines', 'number', typed);
            if ('why' in outcome) return outcome.why;
            setRig(text.spareVocalLines, outcome.row);
            return null;
          }}
        />
      )}
      {dayField('keepUnlessGain', 'optional number')}
      <p className="quiet">{text.keepUnlessGainWhy}</p>
      {rig && (
        <label className="day-setting-check">
          <input
            type="checkbox"
            checked={rig.channelsInUsualOrder}
            onChange={({ target }) =>
              setRig(text.channelsInUsualOrder, { ...rig, channelsInUsualOrder: target.checked })
            }
          />{' '}
          {text.channelsInUsualOrder}
        </label>
      )}
    </section>
  );
}

function Setting({
  label,
  value,
  onCommit,
}: {
  label: string;
  value: string;
  onCommit: (text: string) => string | null;
}) {
  const id = useId();
  return (
    <div className="day-setting">
      <label htmlFor={id}>{label}</label>
      <CheckedField id={id} value={value} onCommit={onCommit} />
    </div>
  );
}
