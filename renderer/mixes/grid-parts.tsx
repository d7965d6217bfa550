import { memo } from 'react';
import type { Feed, Finding } from '../../core/derive/derived.ts';
import { CopyMark } from '../parts/copy-mark.tsx';
import { levelText } from '../parts/format.ts';
import { busText, deviceNames, deviceText, outputText, whoHears } from '../parts/names.ts';
import { SeverityMark, worstOf } from '../parts/severity-mark.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { words } from '../wording/words.ts';
import type { MixTableColumn, MixTableRow } from './mix-table.ts';
import { cellWidth } from './use-window-of-cells.ts';

type ColumnProps = { open: ActOnScreen; column: MixTableColumn; index: number; isChosen: boolean };

export function ColumnHead({ open: { sheet }, column, index, isChosen }: ColumnProps) {
  const { mix, planned, number, findings } = column;
  const worst = worstOf(findings);
  return (
    <div
      role="columnheader"
      tabIndex={-1}
      aria-colindex={index + 2}
      className={isChosen ? 'mix-head is-listened' : 'mix-head'}
      style={{ left: `calc(var(--row-head) + ${index * cellWidth}px)`, width: cellWidth }}
      title={`${whoHears(sheet, mix)}: ${deviceText(mix)}`}
    >
      <span className="mix-head-number">
        {number} {worst && <SeverityMark severity={worst} />}
      </span>
      <strong className="mix-head-who">{whoHears(sheet, mix)}</strong>
      <span className="cut">{deviceNames(sheet, planned) ?? deviceText(mix)}</span>
      <span className="cut">{words.mixes.bus(busText(sheet, planned))}</span>
      <span className="cut">{outputText(sheet, planned) ?? words.mixes.noOutput}</span>
    </div>
  );
}

export function RowHead({ row, isChosen }: { row: MixTableRow; isChosen: boolean }) {
  const { source, copies, socket, findings } = row;
  const worst = worstOf(findings);
  return (
    <div
      role="rowheader"
      tabIndex={-1}
      aria-colindex={1}
      className={isChosen ? 'source-head is-listened' : 'source-head'}
    >
      <span className="source-head-channels">
        {copies.map((copy) => (
          <span key={copy.purpose} className="source-head-channel">
            <CopyMark purpose={copy.purpose} says />
            {copy.channel ?? '?'}
          </span>
        ))}
      </span>
      <span className="source-head-socket">{socket ?? words.mixes.noSocket}</span>
      <strong className="cut">{source.name}</strong>
      {worst && <SeverityMark severity={worst} />}
    </div>
  );
}

type CellProps = {
  feed: Feed;
  row: number;
  column: number;
  label: string;
  findings: readonly Finding[] | undefined;
  isActive: boolean;
  isChosen: boolean;
  isListened: boolean;
};

export const FeedCell = memo(function FeedCell({
  feed,
  row,
  column,
  label,
  findings,
  isActive,
  isChosen,
  isListened,
}: CellProps) {
  const worst = worstOf(findings ?? []);
  const marks = [
    'feed-cell',
    isActive && 'is-active',
    isChosen && 'is-chosen',
    isListened && 'is-listened',
    feed.decided && 'is-decided',
  ];
  return (
    <div
      id={`cell-${row}-${column}`}
      role="gridcell"
      tabIndex={-1}
      data-row={row}
      data-column={column}
      aria-colindex={column + 2}
      aria-selected={isChosen}
      className={marks.filter(Boolean).join(' ')}
      style={{ left: `calc(var(--row-head) + ${column * cellWidth}px)`, width: cellWidth }}
    >
      <span className="unseen">
        {label}: {saysFeed(feed)}
      </span>
      {feed.purpose && <CopyMark purpose={feed.purpose} />}
      {worst && <SeverityMark severity={worst} />}
      <span className="feed-cell-level">
        {feed.purpose ? levelText(feed.levelDb) : feed.amount === 'none' ? words.mixes.none : ''}
      </span>
    </div>
  );
});

/** What a cell says beside its level, for who cannot see its marks. */
function saysFeed(feed: Feed): string {
  if (feed.purpose === null) return words.mixes.notFed;
  const by = feed.decided ? words.common.decided : words.common.proposed;
  return `${words.purpose[feed.purpose].name}, ${by},`;
}
