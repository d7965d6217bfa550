import { useCallback } from 'react';
import type { Finding } from '../../core/derive/derived.ts';
import { feedKey } from '../../core/show/feed-key.ts';
import { FindingsList } from '../parts/findings-list.tsx';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { placeOfFinding } from '../state/finding-places.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { FeedDetails } from './feed-details.tsx';
import { MixDetails } from './mix-details.tsx';
import type { MixTable } from './mix-table.ts';
import { SourceDetails } from './source-details.tsx';
import './side-panel.css';

type Props = { open: ActOnScreen; table: MixTable; onBack: () => void };

/** Beside the table: what is wrong with the act, or what is known of the chosen source and mix. */
export function SidePanel({ open, table, onBack }: Props) {
  const { view, look } = useHere();
  const text = words.mixes;
  const { findings } = open.derived;
  const go = useCallback(
    (finding: Finding) => look({ ...placeOfFinding(open, finding), side: 'details' }),
    [open, look],
  );
  return (
    <aside
      className="side-panel"
      aria-label={view.side === 'findings' ? text.findings : text.details}
      data-region="side"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.preventDefault();
        onBack();
      }}
    >
      <div className="side-panel-head">
        <button
          type="button"
          aria-pressed={view.side === 'findings'}
          onClick={() => look({ side: 'findings' })}
        >
          {text.findings} {findings.length}
        </button>
        <button
          type="button"
          aria-pressed={view.side === 'details'}
          onClick={() => look({ side: 'details' })}
        >
          {text.details}
        </button>
        <button
          type="button"
          className="side-panel-close"
          aria-label={text.closePanel}
          title={text.closePanel}
          onClick={() => {
            look({ side: 'closed' });
            onBack();
          }}
        >
          ×
        </button>
      </div>
      <div className="side-panel-body">
        {view.side === 'details' ? (
          <Details open={open} table={table} />
        ) : findings.length === 0 ? (
          <p className="details-part">{text.noFindings}</p>
        ) : (
          <FindingsList findings={findings} onGo={go} />
        )}
      </div>
    </aside>
  );
}

function Details({ open, table }: Omit<Props, 'onBack'>) {
  const { view, look } = useHere();
  const { sheet } = open;
  const row = table.rows.find(({ source }) => source.id === view.sourceId);
  const mix = sheet.mixes.find((it) => it.id === view.mixId);
  const feed = row?.feeds().find((it) => it.mixId === view.mixId);
  if (!row && !mix) return <p className="details-part">{words.mixes.chooseCell}</p>;
  const here = [
    ...(row && mix
      ? (table.places.ofFeed.get(feedKey({ mixId: mix.id, sourceId: row.source.id })) ?? [])
      : []),
    ...(row?.findings ?? []),
    ...(mix ? (table.places.ofMix.get(mix.id) ?? []) : []),
  ];
  return (
    <>
      {here.length > 0 && (
        <FindingsList
          findings={[...new Set(here)]}
          onGo={(finding) => look({ ...placeOfFinding(open, finding) })}
        />
      )}
      {row && mix && feed && <FeedDetails open={open} source={row.source} mix={mix} feed={feed} />}
      {row && <SourceDetails open={open} source={row.source} />}
      {mix && <MixDetails open={open} mix={mix} />}
    </>
  );
}
