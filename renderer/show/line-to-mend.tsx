import type { LineFault } from '../../core/run/line-faults.ts';
import type { CheckLine } from '../../core/run/lines-to-check.ts';
import { words } from '../wording/words.ts';

type Props = { line: CheckLine; fault: LineFault; came: CheckLine | null; onSwap: () => void };

/** What to do about a line that is not ok; of a swapped one, change the plugs or the plan. */
export function LineToMend({ line, fault, came, onSwap }: Props) {
  const text = words.show;
  const [here, home] = [line.socketName, came?.socketName ?? ''];
  const isKnownSwap = came !== null && here !== '' && home !== '';
  return (
    <section className="line-fault" aria-label={text.toMend}>
      <h3>{fault.cause}</h3>
      {fault.found !== 'swapped' ? (
        <p>{fault.remedy}</p>
      ) : (
        <p>
          {isKnownSwap ? text.replug(came.source.name, here, home) : text.replugUnknown(here)}{' '}
          <strong>{text.replugCaution}</strong>
        </p>
      )}
      {fault.found === 'swapped' && isKnownSwap && (
        <p>
          <button type="button" onClick={onSwap}>
            {text.swapPlan} <kbd>S</kbd>
          </button>{' '}
          {text.swapWhy} {text.swapDone}
        </p>
      )}
    </section>
  );
}
