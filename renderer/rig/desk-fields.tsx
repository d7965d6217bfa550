import { useId } from 'react';
import { put } from '../../core/show/change.ts';
import type { Rig } from '../../core/show/rig.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import { textOfValue, withField } from '../parts/row-fields.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

type FieldName = keyof typeof words.rig.fields;

const deskFields: readonly FieldName[] = [
  'name',
  'deskName',
  'channelCount',
  'headroomDb',
  'targetLevelDbfs',
  'gainMinDb',
  'gainMaxDb',
  'trimMinDb',
  'trimMaxDb',
];
const levelFields: readonly FieldName[] = ['lotsDb', 'someDb', 'littleDb'];
const stageFields: readonly FieldName[] = ['stageWidthM', 'stageDepthM', 'airTemperatureC'];

/** The desk, its rules of level, and the stage it stands at. */
export function DeskFields({ rig }: { rig: Rig }) {
  return (
    <div className="rig-fields">
      {[deskFields, levelFields, stageFields].flat().map((name) => (
        <DeskField key={name} rig={rig} name={name} />
      ))}
    </div>
  );
}

function DeskField({ rig, name }: { rig: Rig; name: FieldName }) {
  const { change } = useHere();
  const id = useId();
  const label = words.rig.fields[name];
  const kind = name === 'name' || name === 'deskName' ? 'text' : 'number';
  const commit = (text: string): string | null => {
    const outcome = withField('rigs', rig, name, kind, text);
    if ('why' in outcome) return outcome.why;
    change({ label: words.field.changed(label, rig.name), put: [put('rigs', outcome.row)], remove: [] });
    return null;
  };
  return (
    <div className={kind === 'text' ? 'rig-field is-text' : 'rig-field'}>
      <label htmlFor={id}>{label}</label>
      <CheckedField id={id} value={textOfValue(rig[name])} onCommit={commit} />
    </div>
  );
}
