import type { Source } from '../../core/show/act.ts';
import { socketNames } from '../../core/show/socket-name.ts';
import { type Purpose, purposes } from '../../core/show/words.ts';
import { CheckedField } from '../parts/checked-field.tsx';
import { CopyMark } from '../parts/copy-mark.tsx';
import { DecisionChoice } from '../parts/decision-field.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { changeOf, decide, setCopy } from './mix-changes.ts';

/** Copies, channels, socket and phantom power of a source. */
export function SourceDetails({ open, source }: { open: ActOnScreen; source: Source }) {
  const { change } = useHere();
  const { sheet, derived } = open;
  const text = words.mixes;
  const patch = derived.plan.patches.find((it) => it.sourceId === source.id);
  const sockets = socketNames(sheet);
  const socket = sockets.get(patch?.socketId ?? '');
  const label = (what: string) => text.change(what, source.name);
  const performer = sheet.performers.find((it) => it.id === source.performerId);
  return (
    <section className="details-part">
      <h2>
        {text.source}: {source.name}
      </h2>
      <p className="quiet">
        {[source.kind, source.pickUp, source.pickUpModel, source.stand, performer?.name]
          .filter(Boolean)
          .join(', ')}
      </p>
      <table className="copies-table">
        <caption className="unseen">{text.copies}</caption>
        <tbody>
          {purposes.map((purpose) => (
            <CopyRow key={purpose} open={open} source={source} purpose={purpose} />
          ))}
        </tbody>
      </table>
      <DecisionChoice
        label={text.socket}
        value={patch?.by === 'engineer' ? patch.socketId : null}
        proposed={socket ?? text.nothingLeft}
        why={patch?.why}
        options={sheet.sockets.map(({ id }) => ({ value: id, label: sockets.get(id) ?? id }))}
        onChoose={(socketId) =>
          change(
            changeOf(label(text.socket), decide(sheet, { about: 'socket', sourceId: source.id, socketId })),
          )
        }
      />
      <DecisionChoice
        label={text.phantom}
        value={patch?.phantomBy === 'engineer' ? (patch.phantomOn ? 'on' : 'off') : null}
        proposed={patch?.phantomOn ? text.on : text.off}
        why={text.phantomCaution}
        options={[
          { value: 'on', label: text.on },
          { value: 'off', label: text.off },
        ]}
        onChoose={(value) => {
          const on = value === null ? null : value === 'on';
          change(changeOf(label(text.phantom), decide(sheet, { about: 'phantom', sourceId: source.id, on })));
        }}
      />
    </section>
  );
}

function CopyRow({ open, source, purpose }: { open: ActOnScreen; source: Source; purpose: Purpose }) {
  const { change } = useHere();
  const { sheet, derived } = open;
  const text = words.mixes;
  const { name } = words.purpose[purpose];
  const planned = derived.plan.copies.find((it) => it.sourceId === source.id && it.purpose === purpose);
  const row = sheet.copies.find((it) => it.sourceId === source.id && it.purpose === purpose);
  const label = text.change(text.made(name), source.name);

  const commitChannel = (typed: string): string | null => {
    const channel = typed.trim() === '' ? null : Number(typed);
    if (channel !== null && !(Number.isInteger(channel) && channel >= 1 && channel <= sheet.rig.channelCount))
      return text.channelBad(sheet.rig.channelCount);
    change(changeOf(label, setCopy(sheet, source.id, purpose, { wanted: true, channel })));
    return null;
  };

  return (
    <tr title={planned?.why}>
      <th scope="row">
        <label>
          <input
            type="checkbox"
            checked={planned !== undefined}
            onChange={({ target }) =>
              change(changeOf(label, setCopy(sheet, source.id, purpose, { wanted: target.checked })))
            }
          />{' '}
          <CopyMark purpose={purpose} /> {words.purpose[purpose].short}
        </label>
      </th>
      <td className={row?.locked && row.channel !== null ? 'is-decided' : undefined}>
        {planned && (
          <CheckedField
            label={text.channelOf(name)}
            value={planned.channel === null ? '' : `${planned.channel}`}
            placeholder={text.nothingLeft}
            onCommit={commitChannel}
          />
        )}
      </td>
      <td>
        {row?.locked ? (
          <button
            type="button"
            aria-label={`${words.common.putBack}: ${text.made(name)}`}
            onClick={() => change(changeOf(label, setCopy(sheet, source.id, purpose, null)))}
          >
            {words.common.putBack}
          </button>
        ) : (
          planned && <span className="quiet decision-by">{words.common.proposed}</span>
        )}
      </td>
    </tr>
  );
}
