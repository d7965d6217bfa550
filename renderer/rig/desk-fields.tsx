import type { Rig } from '../../core/show/rig.ts';
import { LabelledField } from '../parts/labelled-field.tsx';
import { useRowFields } from '../parts/use-row-fields.ts';
import { words } from '../wording/words.ts';

type FieldName = keyof typeof words.rig.fields;

/** What belongs together stands in a row of its own, least beside most. */
const rows: readonly (readonly FieldName[])[] = [
  ['name', 'deskName', 'channelCount', 'targetLevelDbfs'],
  ['gainMinDb', 'gainMaxDb', 'trimMinDb', 'trimMaxDb'],
  ['headroomDb', 'lotsDb', 'someDb', 'littleDb'],
  ['stageWidthM', 'stageDepthM', 'airTemperatureC'],
];

/** The desk, its rules of level, and the stage it stands at. */
export function DeskFields({ rig }: { rig: Rig }) {
  return (
    <>
      {rows.map((names) => (
        <div key={names[0]} className="rig-fields">
          {names.map((name) => (
            <DeskField key={name} rig={rig} name={name} />
          ))}
        </div>
      ))}
    </>
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
