import type { CheckLine } from '../../core/run/lines-to-check.ts';
import type { LineResult } from '../../core/show/as-ran.ts';
import { CopyMark } from '../parts/copy-mark.tsx';
import { clockText } from '../parts/format.ts';
import { words } from '../wording/words.ts';

/** One line, readable from where the patch person is pointed to: what it is, where it comes in, what feeds it. */
export function LineLarge({ line, result }: { line: CheckLine; result: LineResult | null }) {
  const text = words.show;
  const { source, socketName, channels, phantomOn, performer } = line;
  const mic = source.pickUpModel || (source.pickUp ? text.pickUps[source.pickUp] : text.noMic);
  return (
    <div className="line-large">
      <p className="line-large-number">
        {text.line(line.line)} ·{' '}
        {result ? text.lastFound(text.found[result.found], clockText(result.foundAt)) : text.unheard}
      </p>
      <h2>{source.name}</h2>
      <dl>
        <div>
          <dt>{text.atSocket}</dt>
          <dd className="line-large-socket">{socketName || words.common.nothing}</dd>
        </div>
        <div>
          <dt>{text.atChannel}</dt>
          <dd className="line-large-channels">
            {channels.length === 0 && words.common.nothing}
            {channels.map(({ purpose, channel }) => (
              <span key={purpose}>
                {channel} <CopyMark purpose={purpose} says />
              </span>
            ))}
          </dd>
        </div>
        <div>
          <dt>{text.phantom}</dt>
          <dd>{phantomOn ? text.phantomOn : text.phantomOff}</dd>
        </div>
        <div className="line-large-long">
          <dt>{text.who}</dt>
          <dd>{performer || text.nobody}</dd>
        </div>
        <div className="line-large-long">
          <dt>{text.mic}</dt>
          <dd>{mic}</dd>
        </div>
      </dl>
    </div>
  );
}
