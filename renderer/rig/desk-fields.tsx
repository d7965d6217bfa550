import type { Rig } from '../../core/show/rig.ts';
import { LabelledField } from '../parts/labelled-field.tsx';
import { useRowFields } from '../parts/use-row-fields.ts';
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
  const field = useRowFields();
  const kind = name === 'name' || name === 'deskName' ? 'text' : 'number';
  return (
    <LabelledField
      className={kind === 'text' ? 'rig-field is-text' : 'rig-field'}
      {...field('rigs', rig, rig.name, name, words.rig.fields[name], kind)}
    />
  );
}
