import { Copy, Decision } from '../../../core/show/act.ts';
import { type Put, put } from '../../../core/show/change.ts';
import type { DemoAct, DemoDecision } from './demo-day.ts';
import { houseRig } from './house-rig.ts';

/** The engineer's decisions as rows. A name that is not on the act's sheet stops the making of the demo. */
export function decisionRows(demo: DemoAct, rows: readonly Put[], newId: () => string): Put[] {
  const sourceId = (name: RegExp) => idOf(demo, rows, 'sources', name);
  const mixId = (name: RegExp) => idOf(demo, rows, 'mixes', name);
  return demo.decisions.flatMap((it): Put[] => {
    if (it.own === 'confirmed') return [];
    if (it.own === 'copy') return [copyRow(it, sourceId(it.source), newId())];
    const row = {
      id: newId(),
      actId: demo.id,
      about: it.own,
      ...('source' in it && { sourceId: sourceId(it.source) }),
      ...('mix' in it && { mixId: mixId(it.mix) }),
      ...('purpose' in it && { purpose: it.purpose }),
      ...('socket' in it && { socketId: socketId(it.socket) }),
      ...('device' in it && { deviceId: deviceId(it.device) }),
      ...('levelDb' in it && { levelDb: it.levelDb }),
    };
    return [put('decisions', Decision.parse(row))];
  });
}

function copyRow(it: DemoDecision & { own: 'copy' }, sourceId: string, id: string): Put {
  const { purpose, wanted = true, channel = null } = it;
  return put('copies', Copy.parse({ id, sourceId, purpose, wanted, channel }));
}

function idOf(demo: DemoAct, rows: readonly Put[], table: 'sources' | 'mixes', name: RegExp): string {
  const found = rows.find((it) => it.table === table && name.test((it.row as { name: string }).name));
  if (!found) throw new Error(`${demo.name}: nothing in ${table} is called ${name}`);
  return found.row.id;
}

function socketId(written: string): string {
  const id = `socket-${written.slice(0, 1).toLowerCase()}-${written.slice(1)}`;
  if (!houseRig.sockets?.some((socket) => socket.id === id))
    throw new Error(`The rig has no socket ${written}`);
  return id;
}

function deviceId(name: string): string {
  const found = houseRig.devices?.find((device) => device.name === name);
  if (!found) throw new Error(`The rig has no ${name}`);
  return found.id;
}
