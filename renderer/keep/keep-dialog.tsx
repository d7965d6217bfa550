import { useState } from 'react';
import { Modal } from '../parts/modal.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { useAsking } from './ask.ts';
import { CopiesPart } from './copies-part.tsx';
import { FilesPart } from './files-part.tsx';
import { StatesPart } from './states-part.tsx';
import './keep-dialog.css';

const parts = { copies: CopiesPart, states: StatesPart, files: FilesPart } as const;
type Part = keyof typeof parts;
const order: readonly Part[] = ['copies', 'states', 'files'];

/** Everything that keeps the show: back-ups, named states, and files that go out and come in. */
export function KeepDialog() {
  const { look } = useHere();
  const asking = useAsking();
  const [part, setPart] = useState<Part>('copies');
  const text = words.keep;
  const Chosen = parts[part];
  const close = () => look({ open: 'nothing' });
  return (
    <Modal title={text.title} onClose={close} isWide>
      <div className="modal-head keep-head">
        <h2>{text.title}</h2>
        <nav aria-label={text.title}>
          {order.map((it) => (
            <button
              key={it}
              type="button"
              aria-current={it === part ? 'page' : undefined}
              {...(it === part ? { 'data-first-focus': true } : {})}
              onClick={() => {
                asking.tell(null);
                setPart(it);
              }}
            >
              {text.parts[it]}
            </button>
          ))}
        </nav>
        <button type="button" onClick={close}>
          {words.common.close}
        </button>
      </div>
      <div className="modal-body keep">
        {asking.problem && (
          <p role="alert" className="keep-problem">
            <strong>{asking.problem.what}</strong> {asking.problem.todo}
          </p>
        )}
        <Chosen {...asking} />
        <p className="keep-working" role="status">
          {asking.isWaiting && text.working}
        </p>
      </div>
    </Modal>
  );
}
