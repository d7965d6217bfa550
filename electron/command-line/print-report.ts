import type { Question } from '../../core/rider/reading.ts';
import type { ActReport, FeedRow, MixRow, SourceRow } from './act-report.ts';
import { copyWord, levelWord } from './report-words.ts';
import { type TableColumn, textTable } from './text-table.ts';

const sourceColumns: TableColumn<SourceRow>[] = [
  { title: 'Line', right: true, cell: (row) => row.line },
  { title: 'Source', cell: (row) => row.name },
  { title: 'Kind', cell: (row) => row.kind },
  { title: 'Pair with', cell: (row) => row.pair },
  { title: 'Performer', cell: (row) => row.performer },
  { title: 'Socket', cell: (row) => row.socket },
  { title: 'Channels', cell: (row) => row.channels.map(channelWords).join(', ') },
  { title: '48 V', cell: (row) => (row.phantom ? 'on' : 'off') },
];

function channelWords({ purpose, channel }: SourceRow['channels'][number]): string {
  return `${copyWord(purpose)} ${channel ?? 'none left'}`;
}

const mixColumns: TableColumn<MixRow>[] = [
  { title: 'Mix', cell: (row) => row.name },
  { title: 'Listeners', cell: (row) => row.listeners.join(', ') },
  { title: 'Device', cell: (row) => row.device },
  { title: 'Format', cell: (row) => row.format },
  { title: 'Bus', cell: (row) => row.buses.join(' + ') },
  { title: 'Output', cell: (row) => row.outputs.join(' + ') },
  { title: 'Lowered', right: true, cell: (row) => (row.loweredByDb === 0 ? '' : levelWord(row.loweredByDb)) },
  { title: 'Cue on', cell: (row) => row.cue },
  {
    title: 'Cue level',
    right: true,
    cell: (row) => (row.cueOffsetDb === null ? '' : levelWord(row.cueOffsetDb)),
  },
  {
    title: 'Cue delay',
    right: true,
    cell: (row) => (row.cueDelayMs === null ? '' : `${Math.round(row.cueDelayMs * 10) / 10} ms`),
  },
];

const feedColumns: TableColumn<FeedRow>[] = [
  { title: 'Mix', cell: (row) => row.mix },
  { title: 'Source', cell: (row) => row.source },
  { title: 'Copy', cell: (row) => row.copy },
  { title: 'Channel', right: true, cell: (row) => row.channel },
  { title: 'Start', right: true, cell: (row) => levelWord(row.levelDb) },
  { title: 'Why', cell: (row) => row.why },
];

/** An act as tables with headings, for a terminal. */
export function printedReport(title: string, report: ActReport, questions: readonly Question[]): string {
  const parts = [
    `${title}\n${'='.repeat(title.length)}`,
    section('Sources', textTable(sourceColumns, report.sources)),
    section('Mixes', textTable(mixColumns, report.mixes)),
    section('Feeds', textTable(feedColumns, report.feeds)),
    section(
      'Findings',
      report.findings.map((it) => `${it.severity}: ${it.cause}\n    ${it.remedy}`).join('\n'),
    ),
    section(
      'Open questions',
      questions.map((it, place) => `${place + 1}. ${it.ask}${guessOf(it)}`).join('\n'),
    ),
  ];
  return parts.join('\n\n');
}

function section(title: string, text: string): string {
  return `${title}\n${text === '' ? 'none' : text}`;
}

/** The reading already uses the first way to answer. */
function guessOf({ options }: Question): string {
  const guess = options[0];
  return guess ? ` (taken as: ${guess.label})` : '';
}
