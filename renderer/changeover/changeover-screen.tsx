import { useMemo } from 'react';
import type { Act } from '../../core/show/act.ts';
import { EmptyScreen } from '../parts/empty-screen.tsx';
import { timeText } from '../parts/format.ts';
import { deviceNames, deviceText, outputText, whoHears } from '../parts/names.ts';
import { type ActOnScreen, actOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { changeoverByBox } from './changeover-table.ts';
import './changeover-screen.css';

/** From the act before to the open one: what is pulled, what is plugged, who gets which device. */
export function ChangeoverScreen() {
  const { show, acts, open } = useHere();
  const place = acts.findIndex((act) => act.id === open?.sheet.act.id);
  const act = acts[place];
  const before = acts[place - 1];
  const text = words.changeover;
  if (!open || !act) return <EmptyScreen what={text.empty} todo={text.emptyTodo} />;
  const from = before ? actOnScreen(show, before.id) : null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard.
    <section className="changeover" aria-label={words.moments.changeover} tabIndex={0}>
      <header className="changeover-head">
        <h2>{before ? text.fromTo(before.name, act.name) : text.first(act.name)}</h2>
        <p className="changeover-clock">{clockText(before, act)}</p>
      </header>
      <div className="changeover-parts">
        <BoxTasks from={from} to={open} />
        <DeviceTasks to={open} />
      </div>
    </section>
  );
}

function clockText(before: Act | undefined, act: Act): string {
  const text = words.changeover;
  if (act.startMinute === null) return text.noTime;
  if (!before || before.endMinute === null) return text.starts(timeText(act.startMinute));
  return text.minutes(
    act.startMinute - before.endMinute,
    timeText(before.endMinute),
    timeText(act.startMinute),
  );
}

function BoxTasks({ from, to }: { from: ActOnScreen | null; to: ActOnScreen }) {
  const boxes = useMemo(() => changeoverByBox(from, to), [from, to]);
  const text = words.changeover;
  const count = boxes.reduce((sum, box) => sum + box.tasks.length, 0);
  return (
    <section>
      <h3>{text.lines(count)}</h3>
      <p className="changeover-caution">{text.caution}</p>
      {boxes.map(({ name, tasks, stays }) => (
        <section key={name} className="changeover-box">
          <h4>
            {text.box(name)} <span className="quiet">{text.boxCounts(tasks.length, stays)}</span>
          </h4>
          {tasks.length > 0 && (
            <table>
              <thead>
                <tr>
                  <th scope="col">{text.socket}</th>
                  <th scope="col">{text.pull}</th>
                  <th scope="col">{text.plug}</th>
                  <th scope="col">{text.power}</th>
                </tr>
              </thead>
              <tbody>
                {tasks.map((task) => (
                  <tr key={task.socket}>
                    <th scope="row">{task.socket}</th>
                    <td>{task.pull ?? ''}</td>
                    <td className="changeover-plug">{task.plug ?? ''}</td>
                    <td>{text.phantom[task.phantom]}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
        </section>
      ))}
    </section>
  );
}

function DeviceTasks({ to: { sheet, derived } }: { to: ActOnScreen }) {
  const text = words.changeover;
  return (
    <section>
      <h3>{text.devices}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{text.who}</th>
            <th scope="col">{text.device}</th>
            <th scope="col">{text.output}</th>
          </tr>
        </thead>
        <tbody>
          {sheet.mixes.map((mix) => {
            const planned = derived.plan.mixes.find((it) => it.mixId === mix.id);
            return (
              <tr key={mix.id}>
                <th scope="row">{whoHears(sheet, mix)}</th>
                <td>{deviceNames(sheet, planned) ?? deviceText(mix)}</td>
                <td>{outputText(sheet, planned) ?? words.mixes.noOutput}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="changeover-caution">{text.earCaution}</p>
    </section>
  );
}
