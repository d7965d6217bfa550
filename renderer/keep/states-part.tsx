import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import type { CallOutput } from '../../core/contract/contract.ts';
import type { KeptState } from '../../core/contract/copies.ts';
import type { PartRoot } from '../../core/show/part-of-show.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import type { Asking } from './ask.ts';
import { ChoiceList } from './choice-list.tsx';
import { StateLook } from './state-look.tsx';
import { ageText, whenText } from './times.ts';

/** Named states of the open act or its day: keep one, see what differs, bring one back. */
export function StatesPart({ ask }: Asking) {
  const { open, day, take } = useHere();
  const text = words.keep.states;
  const act = open?.sheet.act ?? null;
  const [table, setTable] = useState<PartRoot['table']>(act ? 'acts' : 'days');
  const root = table === 'acts' ? act : day;
  const of: PartRoot | null = root && { table, id: root.id };
  const [states, setStates] = useState<KeptState[]>([]);
  const [chosen, setChosen] = useState<KeptState | null>(null);
  const [toId, setToId] = useState<string | null>(null);
  const [found, setFound] = useState<CallOutput<'states.compare'> | null>(null);
  const [name, setName] = useState('');
  const [said, setSaid] = useState('');
  const wanted = useRef('');
  const [ofId, nameId] = [useId(), useId()];

  const load = async () => {
    const answer = of && (await ask('states.list', { of }));
    setStates(answer?.states ?? []);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked anew when another act or day is looked at.
  useEffect(() => {
    setChosen(null);
    setFound(null);
    void load();
  }, [table, root?.id]);

  if (!of || !root) return <p>{text.nothing}</p>;

  const compare = async (state: KeptState, withId: string | null) => {
    wanted.current = `${state.id} ${withId}`;
    setChosen(state);
    setToId(withId);
    setFound(null);
    const answer = await ask('states.compare', { of, fromId: state.id, toId: withId });
    if (wanted.current === `${state.id} ${withId}`) setFound(answer);
  };
  const keep = async (event: FormEvent) => {
    event.preventDefault();
    const answer = await ask('states.keep', { of, name });
    if (!answer) return;
    setSaid(text.kept(answer.state.name));
    setName('');
    await load();
  };
  const bringBack = async (state: KeptState) => {
    const answer = await ask('states.restore', { of, stateId: state.id });
    if (!answer) return;
    take(answer.changed);
    setSaid(text.done(state.name, answer.leftOut));
    await compare(state, null);
  };
  const what = { acts: act && text.act(act.name), days: day && text.day(day.name) };

  return (
    <div className="keep-columns">
      <section className="keep-column" aria-label={text.list}>
        <p className="keep-row">
          <label htmlFor={ofId}>{text.of}</label>
          <select
            id={ofId}
            value={table}
            onChange={(event) => {
              setSaid('');
              setTable(event.target.value === 'acts' ? 'acts' : 'days');
            }}
          >
            {act && <option value="acts">{what.acts}</option>}
            {day && <option value="days">{what.days}</option>}
          </select>
        </p>
        <form className="keep-row" onSubmit={keep}>
          <label htmlFor={nameId}>{text.name}</label>
          <input
            id={nameId}
            value={name}
            maxLength={120}
            placeholder={text.nameHint}
            onChange={(event) => setName(event.target.value)}
          />
          <button type="submit" disabled={name.trim() === ''}>
            {text.keep}
          </button>
        </form>
        <p role="status">{said}</p>
        {states.length === 0 && <p className="quiet">{text.none}</p>}
        <ChoiceList
          label={text.list}
          chosen={chosen?.id ?? null}
          onChoose={(id) => {
            const state = states.find((it) => it.id === id);
            setSaid('');
            if (state) void compare(state, null);
          }}
          choices={states.map((state) => ({ key: state.id, lines: <StateLines state={state} /> }))}
        />
      </section>
      <StateLook
        key={chosen?.id ?? 'none'}
        state={chosen}
        others={states.filter(({ id }) => id !== chosen?.id)}
        toId={toId}
        found={found}
        what={what[table] ?? ''}
        onCompare={(withId) => chosen && void compare(chosen, withId)}
        onBringBack={bringBack}
      />
    </div>
  );
}

function StateLines({ state: { name, keptAt, device } }: { state: KeptState }) {
  return (
    <>
      <strong>{name}</strong> {ageText(keptAt)}
      <span className="keep-second-line">
        {whenText(keptAt)}, {words.keep.states.on(device)}
      </span>
    </>
  );
}
