import type { Mix } from '../../core/show/act.ts';
import { DecisionChoice } from '../parts/decision-field.tsx';
import { levelText, offsetText } from '../parts/format.ts';
import { busText, deviceNames, deviceText, mixNumber, outputText, whoHears } from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { changeOf, decide } from './mix-changes.ts';

/** The way of a mix to its devices, and where the engineer hears it. */
export function MixDetails({ open, mix }: { open: ActOnScreen; mix: Mix }) {
  const { change } = useHere();
  const { sheet, derived } = open;
  const text = words.mixes;
  const planned = derived.plan.mixes.find((it) => it.mixId === mix.id);
  const cue = derived.cues.find((it) => it.mixId === mix.id);
  const level = derived.levels.find((it) => it.mixId === mix.id);
  const who = whoHears(sheet, mix);
  const label = (what: string) => text.change(what, who);
  const firstIfDecided = (by: string | undefined, ids: readonly string[] | undefined) =>
    by === 'engineer' ? (ids?.[0] ?? null) : null;
  const named = <T extends { id: string }>(rows: readonly T[], name: (row: T) => string) =>
    rows.map((row) => ({ value: row.id, label: name(row) }));

  return (
    <section className="details-part">
      <h2>
        {text.mix} {mixNumber(sheet, mix.id)}: {who}
      </h2>
      <p className="quiet">
        {[deviceText(mix), mix.place, mix.mixedAt === 'elsewhere' ? words.listening.elsewhere : '']
          .filter(Boolean)
          .join(', ')}
      </p>
      <DecisionChoice
        label={text.device}
        value={firstIfDecided(planned?.deviceBy, planned?.deviceIds)}
        proposed={deviceNames(sheet, planned) ?? text.nothingLeft}
        options={named(
          sheet.devices.filter((device) => !device.forCue),
          (device) => `${device.name} (${words.deviceKind[device.kind]})`,
        )}
        onChoose={(deviceId) =>
          change(changeOf(label(text.device), decide(sheet, { about: 'device', mixId: mix.id, deviceId })))
        }
      />
      <DecisionChoice
        label={text.busLabel}
        value={firstIfDecided(planned?.busBy, planned?.busIds)}
        proposed={busText(sheet, planned) ?? text.nothingLeft}
        options={named(sheet.buses, (bus) => `${bus.number}`)}
        onChoose={(busId) =>
          change(changeOf(label(text.busLabel), decide(sheet, { about: 'bus', mixId: mix.id, busId })))
        }
      />
      <DecisionChoice
        label={text.output}
        value={firstIfDecided(planned?.outputBy, planned?.outputIds)}
        proposed={outputText(sheet, planned) ?? text.nothingLeft}
        why={planned?.why}
        options={named(sheet.outputs, (output) => output.name)}
        onChoose={(outputId) =>
          change(changeOf(label(text.output), decide(sheet, { about: 'output', mixId: mix.id, outputId })))
        }
      />
      <DecisionChoice
        label={text.cue}
        value={cue?.decided ? cue.cueOutputId : null}
        proposed={sheet.cueOutputs.find((it) => it.id === cue?.cueOutputId)?.name ?? text.nothingLeft}
        why={cue?.why}
        options={named(sheet.cueOutputs, (output) => output.name)}
        onChoose={(cueOutputId) =>
          change(changeOf(label(text.cue), decide(sheet, { about: 'cue', mixId: mix.id, cueOutputId })))
        }
      />
      {level && level.sumDb !== null && (
        <p>
          {text.sum(
            offsetText(level.sumDb),
            level.loweredByDb < 0 ? `${levelText(Math.abs(level.loweredByDb))} dB` : null,
          )}
        </p>
      )}
      <p className="quiet">{text.levelCaution}</p>
    </section>
  );
}
