import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './guide.css';

/** The way from an empty show to the first plan, in two steps. */
export function Guide() {
  const { day, look } = useHere();
  const text = words.guide;
  const hasRig = day !== null;
  return (
    <section className="guide" aria-label={text.title}>
      <h2>{text.title}</h2>
      <ol>
        <li className={hasRig ? 'is-done' : undefined}>
          <h3>
            1 · {text.rig} {hasRig && '✓'}
          </h3>
          <p>{hasRig ? text.rigDone : text.rigTodo}</p>
          <button
            type="button"
            className={hasRig ? undefined : 'main'}
            onClick={() => look({ moment: 'rig' })}
          >
            {text.toRig}
          </button>
        </li>
        <li>
          <h3>2 · {text.rider}</h3>
          <p>{text.riderTodo}</p>
          <button
            type="button"
            className={hasRig ? 'main' : undefined}
            disabled={!hasRig}
            onClick={() => look({ moment: 'advance', newAct: true })}
          >
            {text.toRider}
          </button>
        </li>
      </ol>
    </section>
  );
}
