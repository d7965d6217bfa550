import { type Binding, bindings } from '../keys/bindings.ts';
import { Modal } from '../parts/modal.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import './key-card.css';

/** The keys that count now: those of the moment first, then those of everywhere. */
export function KeyCard() {
  const { view, look } = useHere();
  const close = () => look({ open: 'nothing' });
  const ofMoment = bindings.filter((binding) => binding.where === view.moment);
  return (
    <Modal title={words.keyCard.title} onClose={close} isWide>
      <div className="modal-head">
        <h2>{words.keyCard.title}</h2>
        <button type="button" onClick={close}>
          {words.common.close}
        </button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard. */}
      <section className="modal-body key-card" tabIndex={0} aria-label={words.keyCard.title}>
        {ofMoment.length > 0 && <KeyList title={words.moments[view.moment]} list={ofMoment} />}
        <KeyList
          title={words.keyCard.everywhere}
          list={bindings.filter((binding) => binding.where === 'everywhere')}
        />
        <p className="quiet">{words.keyCard.also}</p>
      </section>
    </Modal>
  );
}

function KeyList({ title, list }: { title: string; list: readonly Binding[] }) {
  return (
    <section>
      <h3>{title}</h3>
      <dl>
        {list.map(({ id, keys }) => (
          <div key={id}>
            <dt>
              {keys.map((key) => (
                <kbd key={key}>{key === '+' ? key : key.replaceAll('+', ' ')}</kbd>
              ))}
            </dt>
            <dd>{words.keyTexts[id]}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
