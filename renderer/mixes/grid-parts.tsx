import { memo } from 'react';
import type { Feed } from '../../core/derive/derived.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { feedKey } from '../../core/show/feed-key.ts';
import type { Id } from '../../core/show/rig.ts';
import type { Purpose, Severity } from '../../core/show/words.ts';
import { markBefore } from '../parts/copy-mark.tsx';
import { levelText } from '../parts/format.ts';
import { busText, deviceKindText, deviceNames, deviceText, outputText } from '../parts/names.ts';
import { SeverityMark, worstOf } from '../parts/severity-mark.tsx';
import type { FindingPlaces } from '../state/finding-places.ts';
import { words } from '../wording/words.ts';
import type { MixTableColumn, MixTableRow } from './mix-table.ts';
import { cellWidth, rowHeight } from './use-window-of-cells.ts';

type ColumnProps = { sheet: ActSheet; column: MixTableColumn; index: number; isListened: boolean };

export const ColumnHead = memo(function ColumnHead({ sheet, column, index, isListened }: ColumnProps) {
  const { mix, planned, place, who, findings } = column;
  const worst = worstOf(findings);
  return (
    <div
      role="columnheader"
      tabIndex={-1}
      aria-colindex={index + 2}
      data-head-column={index}
      className={isListened ? 'mix-head is-listened' : 'mix-head'}
      title={`${who}: ${deviceText(mix)}`}
    >
      <span className="mix-head-number">
        {place + 1} {worst && <SeverityMark severity={worst} />}
      </span>
      <strong className="mix-head-who">{who}</strong>
      <span className="cut">{deviceNames(sheet, planned) ?? deviceKindText(mix)}</span>
      <span className="cut">{words.mixes.bus(busText(sheet, planned))}</span>
      <span className="cut">{outputText(sheet, planned) ?? words.mixes.noOutput}</span>
    </div>
  );
});

/** The room of the columns that are out of sight on the left. */
export const ColumnsBefore = ({ count }: { count: number }) =>
  count === 0 ? null : (
    <span aria-hidden="true" className="mix-grid-before" style={{ width: count * cellWidth }} />
  );

const headId = (row: number) => `mix-row-head-${row}`;
const placeOfRow = (index: number) => ({ top: index * rowHeight, height: rowHeight });

type RowProps = {
  row: MixTableRow;
  index: number;
  columns: readonly MixTableColumn[];
  firstColumn: number;
  places: FindingPlaces;
  /** Where the cursor stands in this row; null where it is in another. */
  activeColumn: number | null;
  /** The chosen columns of this row, as two numbers, so that a row that has none stays as it is drawn. */
  chosenLeft: number;
  chosenRight: number;
};

/**
 * The cells in sight of one source. Its head stands apart (`RowHead`), so that all heads keep their place on the
 * left as one thing: each for itself would be a surface of its own that the browser has to paint and to move.
 */
export const GridRow = memo(function GridRow({
  row,
  index,
  columns,
  firstColumn,
  places,
  activeColumn,
  chosenLeft,
  chosenRight,
}: RowProps) {
  const feeds = row.feeds();
  return (
    <div
      role="row"
      tabIndex={-1}
      aria-rowindex={index + 2}
      aria-owns={headId(index)}
      className={row.startsGroup ? 'mix-grid-row starts-group' : 'mix-grid-row'}
      style={placeOfRow(index)}
    >
      <ColumnsBefore count={firstColumn} />
      {columns.map(({ mix, place, who }, offset) => {
        const column = firstColumn + offset;
        const feed = feeds[place];
        return feed ? (
          // Cells are told by their place, not by their mix: another act is drawn into the cells that are there.
          <FeedCell
            key={column}
            {...textOfFeed(feed)}
            of={words.mixes.cell(who, row.source.name)}
            worst={worstAt(places, mix.id, row.source.id)}
            row={index}
            column={column}
            isActive={column === activeColumn}
            isChosen={column >= chosenLeft && column <= chosenRight}
          />
        ) : null;
      })}
    </div>
  );
});

function worstAt(places: FindingPlaces, mixId: Id, sourceId: Id): Severity | null {
  const findings = places.ofFeed.get(feedKey({ mixId, sourceId }));
  return findings ? worstOf(findings) : null;
}

type HeadProps = { row: MixTableRow; index: number; isListened: boolean };

/** Channels, socket and name of a source. Few elements: its marks are said by its label. */
export const RowHead = memo(function RowHead({ row, index, isListened }: HeadProps) {
  const { source, copies, socket, findings } = row;
  const worst = worstOf(findings);
  const marks = ['source-head', row.startsGroup && 'starts-group', isListened && 'is-listened'];
  return (
    <div
      id={headId(index)}
      role="rowheader"
      tabIndex={-1}
      aria-colindex={1}
      aria-label={saysHead(row, worst)}
      data-head-row={index}
      className={marks.filter(Boolean).join(' ')}
      style={placeOfRow(index)}
    >
      <span className="source-head-channels">
        {copies.map(({ purpose, channel }) => (
          <span key={purpose} className={markBefore(purpose)}>
            {channel ?? '?'}
          </span>
        ))}
      </span>
      <span className="source-head-socket">{socket ?? words.mixes.noSocket}</span>
      <strong className="cut" title={source.name}>
        {source.name}
      </strong>
      {worst && <SeverityMark severity={worst} says={false} />}
    </div>
  );
});

/** The head for who cannot see its marks: "Kick in, socket A1, house 1, monitors 49". */
function saysHead({ source, socket, copies }: MixTableRow, worst: Severity | null): string {
  const channels = copies.map(({ purpose, channel }) => `${words.purpose[purpose].name} ${channel ?? '?'}`);
  const parts = [source.name, socket && words.mixes.inSocket(socket), ...channels];
  return [...parts, worst && words.severity[worst]].filter(Boolean).join(', ');
}

type FeedText = { purpose: Purpose | null; level: string; isDecided: boolean };

function textOfFeed({ purpose, levelDb, amount, decided }: Feed): FeedText {
  if (purpose !== null) return { purpose, level: levelText(levelDb), isDecided: decided };
  return { purpose, level: amount === 'none' ? words.mixes.none : '', isDecided: decided };
}

type CellProps = FeedText & {
  of: string;
  worst: Severity | null;
  row: number;
  column: number;
  isActive: boolean;
  isChosen: boolean;
};

/**
 * Takes nothing but words and numbers: what is derived anew and says the same is not drawn again. One element: there
 * are hundreds, and another act changes them all.
 */
const FeedCell = memo(function FeedCell(cell: CellProps) {
  const { purpose, level, isDecided, of, worst, row, column, isActive, isChosen } = cell;
  const marks = [
    'feed-cell',
    purpose && markBefore(purpose),
    isActive && 'is-active',
    isChosen && 'is-chosen',
    isDecided && 'is-decided',
  ];
  return (
    <div
      id={`cell-${row}-${column}`}
      role="gridcell"
      tabIndex={-1}
      data-row={row}
      data-column={column}
      aria-label={`${of}: ${saysFeed(cell)}`}
      aria-colindex={column + 2}
      aria-selected={isChosen}
      className={marks.filter(Boolean).join(' ')}
    >
      {worst && <SeverityMark severity={worst} says={false} />}
      {level}
    </div>
  );
});

/** The cell for who cannot see its marks: "monitors, proposed, −6". */
function saysFeed({ purpose, level, isDecided, worst }: CellProps): string {
  const { common, mixes, severity } = words;
  const parts =
    purpose === null
      ? [mixes.notFed, level]
      : [words.purpose[purpose].name, isDecided ? common.decided : common.proposed, level];
  return [...parts, worst && severity[worst]].filter(Boolean).join(', ');
}
