import { useMemo, useState } from 'react';
import type { CheckLine } from '../../core/run/lines-to-check.ts';
import type { Id } from '../../core/show/rig.ts';
import { FindList } from '../parts/find-list.tsx';
import { Modal } from '../parts/modal.tsx';
import { words } from '../wording/words.ts';

type Props = {
  line: CheckLine;
  lines: readonly CheckLine[];
  /** null: another line, nobody knows which. */
  onTake: (sourceId: Id | null) => void;
  onClose: () => void;
};

/** Asks which line came instead. The neighbours on the box stand first: plugs are mostly one beside. */
export function WhichCame({ line, lines, onTake, onClose }: Props) {
  const text = words.show;
  const [typed, setTyped] = useState('');
  const others = useMemo(() => nearestFirst(line, lines), [line, lines]);
  const letters = typed.trim().toLowerCase();
  const found = others.filter(({ source, socketName }) =>
    `${source.name} ${socketName}`.toLowerCase().includes(letters),
  );
  return (
    <Modal title={text.whichCame(line.source.name)} onClose={onClose}>
      <div className="modal-head">
        <h2>{text.whichCame(line.source.name)}</h2>
      </div>
      <FindList
        label={text.whichCame(line.source.name)}
        placeholder={text.cameHint}
        listLabel={text.lines}
        text={typed}
        onText={setTyped}
        items={found}
        keyOf={({ source }) => source.id}
        row={({ source, socketName, performer }) => (
          <>
            <strong>{socketName || words.common.nothing}</strong>
            <strong>{source.name}</strong>
            <span className="quiet cut">{performer}</span>
          </>
        )}
        onTake={({ source }) => onTake(source.id)}
      >
        {found.length === 0 && (
          <p className="modal-body" role="status">
            {text.cameNothing}
          </p>
        )}
      </FindList>
      <div className="which-came">
        <button type="button" onClick={() => onTake(null)}>
          {text.cameUnknown}
        </button>
        <button type="button" onClick={onClose}>
          {words.common.close} <kbd>Esc</kbd>
        </button>
      </div>
    </Modal>
  );
}

function nearestFirst(line: CheckLine, lines: readonly CheckLine[]): CheckLine[] {
  const far = 1000;
  const distance = ({ socket }: CheckLine) =>
    socket && line.socket && socket.boxId === line.socket.boxId
      ? Math.abs(socket.number - line.socket.number)
      : far;
  return lines.filter((it) => it !== line).sort((one, other) => distance(one) - distance(other));
}
