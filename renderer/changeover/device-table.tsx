import { deviceText, outputText, whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';

/** Who gets which device and from whom it comes. Before the first act everything comes from the store. */
export function DeviceTable({ from, to }: { from: ActOnScreen | null; to: ActOnScreen }) {
  const text = words.changeover;
  const holder = new Map(
    (from?.derived.plan.mixes ?? []).flatMap(({ mixId, deviceIds }) => {
      const mix = from?.sheet.mixes.find((it) => it.id === mixId);
      return from && mix ? deviceIds.map((id) => [id, whoHears(from.sheet, mix)] as const) : [];
    }),
  );
  const { sheet, derived } = to;
  return (
    <section className="changeover-devices">
      <h3>{text.devices}</h3>
      <p className="changeover-caution">{text.earCaution}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{text.who}</th>
            <th scope="col">{text.device}</th>
            {from && <th scope="col">{text.comesFrom}</th>}
            <th scope="col">{text.output}</th>
          </tr>
        </thead>
        <tbody>
          {sheet.mixes.map((mix) => {
            const planned = derived.plan.mixes.find((it) => it.mixId === mix.id);
            const devices = (planned?.deviceIds ?? []).flatMap(
              (id) => sheet.devices.find((device) => device.id === id) ?? [],
            );
            const names = devices.map((device) => device.name).join(', ');
            const before = devices.map((device) => holder.get(device.id) ?? text.newDevice);
            return (
              <tr key={mix.id}>
                <th scope="row">{whoHears(sheet, mix)}</th>
                <td>{names || `${deviceText(mix)}, ${text.noDevice}`}</td>
                {from && <td>{[...new Set(before)].join(', ')}</td>}
                <td>{outputText(sheet, planned) ?? words.mixes.noOutput}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
