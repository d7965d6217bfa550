import { EmptyScreen } from '../parts/empty-screen.tsx';
import { timeText } from '../parts/format.ts';
import {
  busText,
  deviceNames,
  deviceText,
  mixNumber,
  outputText,
  socketName,
  whoHears,
} from '../parts/names.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './paper-screen.css';

/** The sheets of the open act as they are printed. */
export function PaperScreen() {
  const { open, look } = useHere();
  const text = words.paper;
  if (!open || open.sheet.sources.length === 0)
    return (
      <EmptyScreen
        what={text.empty}
        todo={text.emptyTodo}
        action={{ label: words.mixes.toAdvance, run: () => look({ moment: 'advance' }) }}
      />
    );
  const { act, day } = open.sheet;
  return (
    <section className="paper" aria-label={words.moments.paper}>
      <div className="paper-tools">
        <button type="button" className="main" data-first-focus onClick={() => window.print()}>
          {text.print}
        </button>
        <span className="quiet">{text.printNote}</span>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard. */}
      <section className="paper-page" tabIndex={0} aria-label={text.inputList}>
        <header>
          <h2>{act.name}</h2>
          <p>
            {[text.inputList, day.name, day.date, act.startMinute === null ? '' : timeText(act.startMinute)]
              .filter(Boolean)
              .join(' · ')}
          </p>
        </header>
        <InputList open={open} />
        <h3>{text.mixes}</h3>
        <MixList open={open} />
        <p className="paper-caution">{text.caution}</p>
      </section>
    </section>
  );
}

function InputList({ open: { sheet, derived } }: { open: ActOnScreen }) {
  const text = words.paper;
  const rows = derived.plan.copies
    .flatMap((copy) => {
      const place = sheet.sources.findIndex((source) => source.id === copy.sourceId);
      const source = sheet.sources[place];
      return source ? [{ copy, source, patch: derived.plan.patches[place] }] : [];
    })
    .sort((a, b) => (a.copy.channel ?? 9999) - (b.copy.channel ?? 9999));
  return (
    <table>
      <thead>
        <tr>
          {[
            text.channel,
            text.socket,
            text.source,
            text.copy,
            text.pickUp,
            text.phantom,
            text.stand,
            text.performer,
          ].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ copy, source, patch }) => (
          <tr key={`${copy.sourceId} ${copy.purpose}`}>
            <th scope="row">{copy.channel ?? text.missing}</th>
            <td>{socketName(sheet, patch?.socketId ?? null) ?? text.missing}</td>
            <td className="paper-source">{source.name}</td>
            <td>
              {words.purpose[copy.purpose].letter} {words.purpose[copy.purpose].short}
            </td>
            <td>{[source.pickUp, source.pickUpModel].filter(Boolean).join(' ')}</td>
            <td>{patch?.phantomOn ? text.on : ''}</td>
            <td>{source.stand}</td>
            <td>{sheet.performers.find((it) => it.id === source.performerId)?.name ?? ''}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function MixList({ open: { sheet, derived } }: { open: ActOnScreen }) {
  const text = words.paper;
  return (
    <table>
      <thead>
        <tr>
          {[text.mix, text.performer, text.device, text.bus, text.output].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {sheet.mixes.map((mix) => {
          const planned = derived.plan.mixes.find((it) => it.mixId === mix.id);
          return (
            <tr key={mix.id}>
              <th scope="row">{mixNumber(sheet, mix.id)}</th>
              <td className="paper-source">{whoHears(sheet, mix)}</td>
              <td>{[deviceText(mix), deviceNames(sheet, planned)].filter(Boolean).join(', ')}</td>
              <td>{busText(sheet, planned) ?? text.missing}</td>
              <td>{outputText(sheet, planned) ?? text.missing}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
