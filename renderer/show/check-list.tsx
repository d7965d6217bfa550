import { useEffect, useRef } from 'react';
import type { CheckLine, CheckOrder } from '../../core/run/lines-to-check.ts';
import type { LineResult } from '../../core/show/as-ran.ts';
import type { Id } from '../../core/show/rig.ts';
import { words } from '../wording/words.ts';

type Props = {
  lines: readonly CheckLine[];
  results: ReadonlyMap<Id, LineResult>;
  order: CheckOrder;
  chosenId: Id;
  onChoose: (sourceId: Id) => void;
};

/** All lines in their order, each with what was found of it. */
export function CheckList({ lines, results, order, chosenId, onChoose }: Props) {
  const text = words.show;
  const list = useRef<HTMLOListElement>(null);
  const at = lines.findIndex(({ source }) => source.id === chosenId);
  useEffect(() => {
    if (list.current) keepInSight(list.current, list.current.children[at]);
  }, [at]);
  return (
    <ol ref={list}>
      {lines.map(({ source, socketName, channels }) => {
        const found = results.get(source.id)?.found;
        const place = order === 'by socket' ? socketName : `${channels[0]?.channel ?? ''}`;
        return (
          <li key={source.id}>
            <button
              type="button"
              className="list-button check-list-line"
              aria-current={source.id === chosenId ? 'true' : undefined}
              tabIndex={source.id === chosenId ? 0 : -1}
              onClick={() => onChoose(source.id)}
            >
              <span className="check-list-place">{place || words.common.nothing}</span>
              <span className="cut">{source.name}</span>
              {found ? (
                <strong className={`check-list-found line-check-${found}`}>
                  <span aria-hidden="true">{text.signs[found]}</span> {text.found[found]}
                </strong>
              ) : (
                <span className="unseen">{text.unheard}</span>
              )}
            </button>
          </li>
        );
      })}
    </ol>
  );
}

/** Scrolls the list alone: in a low window the line that is large must not scroll away with it. */
function keepInSight(list: HTMLElement, item: Element | undefined): void {
  if (!item) return;
  const frame = list.getBoundingClientRect();
  const { top, bottom } = item.getBoundingClientRect();
  if (top < frame.top) list.scrollTop -= frame.top - top;
  else if (bottom > frame.bottom) list.scrollTop += bottom - frame.bottom;
}
