import type { Day } from '../../core/show/act.ts';
import { put } from '../../core/show/change.ts';
import { LabelledField } from '../parts/labelled-field.tsx';
import type { FieldKind } from '../parts/row-fields.ts';
import { useRowFields } from '../parts/use-row-fields.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** What is true of the whole day, and what the planner keeps to. */
export function DaySettings({ day }: { day: Day }) {
  const { show, change } = useHere();
  const field = useRowFields();
  const text = words.day;
  const rig = show.rigs.get(day.rigId);
  const dayField = (name: 'crewSize' | 'changeoverMinutes' | 'keepUnlessGain', kind: FieldKind) => (
    <LabelledField className="day-setting" {...field('days', day, day.name, name, text[name], kind)} />
  );
  return (
    <section className="day-settings">
      <h2>{text.settings}</h2>
      {dayField('crewSize', 'number')}
      {dayField('changeoverMinutes', 'number')}
      {rig && (
        <LabelledField
          className="day-setting"
          {...field('rigs', rig, rig.name, 'spareVocalLines', text.spareVocalLines, 'number')}
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
              change({
                label: words.field.changed(text.channelsInUsualOrder, rig.name),
                put: [put('rigs', { ...rig, channelsInUsualOrder: target.checked })],
                remove: [],
              })
            }
          />{' '}
          {text.channelsInUsualOrder}
        </label>
      )}
    </section>
  );
}
