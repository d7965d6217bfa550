import { CueOutput } from '../../core/show/rig.ts';
import { formats } from '../../core/show/words.ts';
import { columnMaker } from '../parts/row-fields.ts';
import { SheetTable } from '../parts/sheet-table.tsx';
import { useHere } from '../state/here.tsx';
import { newId } from '../state/new-id.ts';
import { words } from '../wording/words.ts';
import type { RigTableProps } from './rig-screen.tsx';

export function CueTable({ rig }: RigTableProps) {
  const { show, change } = useHere();
  const text = words.rig;
  const ofRig = <T extends { rigId: string }>(rows: ReadonlyMap<string, T>) =>
    [...rows.values()].filter((it) => it.rigId === rig.id);
  const rows = ofRig(show.cueOutputs);
  const orNothing = (list: readonly { id: string; name: string }[]) => [
    { value: null, label: '' },
    ...list.map(({ id, name }) => ({ value: id, label: name })),
  ];
  const outputs = () => orNothing(ofRig(show.outputs));
  const { field, choice, add, remove } = columnMaker({
    table: 'cueOutputs',
    change,
    nameOf: (it) => it.name,
  });
  return (
    <SheetTable
      label={text.cueOutputs}
      rows={rows}
      columns={[
        field('name', text.name, 9),
        choice('kind', text.kind, 6, () => [
          { value: 'wedge', label: words.deviceKind.wedge },
          { value: 'in-ear', label: words.deviceKind['in-ear'] },
        ]),
        choice('format', text.format, 5, () => formats.map((value) => ({ value, label: value }))),
        choice('outputId', text.output, 7, outputs),
        choice('secondOutputId', text.second, 7, outputs),
        choice('deviceId', text.device, 9, () => orNothing(ofRig(show.devices).filter((it) => it.forCue))),
        field('distanceFromStageM', text.fromStage, 7, 'optional number'),
      ]}
      empty={text.noRows}
      onAdd={{
        label: text.newCue,
        run: () => {
          const cue = CueOutput.parse({
            id: newId(),
            rigId: rig.id,
            name: 'cue wedge',
            kind: 'wedge',
            format: 'mono',
          });
          add(cue);
        },
      }}
      onRemove={remove}
    />
  );
}
