import type { ReactNode } from 'react';
import type { Rig } from '../../core/show/rig.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { BoxesTable } from './boxes-table.tsx';
import { BusesTable } from './buses-table.tsx';
import { CueTable } from './cue-table.tsx';
import { DeskFields } from './desk-fields.tsx';
import { DevicesTable } from './devices-table.tsx';
import { firstRig } from './first-rig.ts';
import { OutputsTable } from './outputs-table.tsx';
import { SocketsTable } from './sockets-table.tsx';
import './rig-screen.css';

/** The house kit of the day, as tables that are edited in place. */
export function RigScreen() {
  const { show, day, change } = useHere();
  const rig = (day && show.rigs.get(day.rigId)) ?? [...show.rigs.values()][0];
  const text = words.rig;
  if (!rig)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: text.makeFirst, run: () => change(firstRig()) }}
      />
    );
  return (
    <div className="rig">
      <RigPart title={text.desk}>
        <DeskFields rig={rig} />
      </RigPart>
      <RigPart title={text.boxes}>
        <BoxesTable rig={rig} />
      </RigPart>
      <RigPart title={text.sockets} note={text.socketsNote}>
        <SocketsTable rig={rig} />
      </RigPart>
      <RigPart title={text.buses}>
        <BusesTable rig={rig} />
      </RigPart>
      <RigPart title={text.outputs}>
        <OutputsTable rig={rig} />
      </RigPart>
      <RigPart title={text.devices} note={text.devicesNote}>
        <DevicesTable rig={rig} />
      </RigPart>
      <RigPart title={text.cueOutputs}>
        <CueTable rig={rig} />
      </RigPart>
    </div>
  );
}

export type RigTableProps = { rig: Rig };

function RigPart({ title, note, children }: { title: string; note?: string; children: ReactNode }) {
  return (
    <section className="rig-part">
      <h2>{title}</h2>
      {note && <p className="quiet">{note}</p>}
      {children}
    </section>
  );
}
