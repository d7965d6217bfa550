import { useState } from 'react';
import type { Act } from '../../core/show/act.ts';
import { Modal } from '../parts/modal.tsx';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';

/** Takes an act off the day, after a question. */
export function RemoveAct({ act }: { act: Act }) {
  const { change, look } = useHere();
  const [isAsking, setAsking] = useState(false);
  const text = words.advance;
  return (
    <>
      <button type="button" className="plain" onClick={() => setAsking(true)}>
        {text.removeAct}
      </button>
      {isAsking && (
        <Modal title={text.removeAct} onClose={() => setAsking(false)}>
          <div className="modal-body advance-remove">
            <p role="alert">{text.removeActSure(act.name)}</p>
            <button
              type="button"
              onClick={() => {
                change({
                  label: words.common.removeRow(act.name),
                  put: [],
                  remove: [{ table: 'acts', id: act.id }],
                });
                look({ actId: null });
              }}
            >
              {text.removeActYes}
            </button>
            {/* The safe answer is the one under the Enter key. */}
            <button type="button" className="main" data-first-focus onClick={() => setAsking(false)}>
              {text.removeActNo}
            </button>
          </div>
        </Modal>
      )}
    </>
  );
}
