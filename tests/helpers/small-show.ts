import { type Show, ShowDocument, showFromRows } from '../../core/show/show.ts';

/** The smallest show with a row in most tables: one box, one act, one singer with a wish, one pair of keys. */
export function smallShow(): Show {
  return showFromRows(
    ShowDocument.parse({
      format: 'foldbook-show',
      version: 1,
      rigs: [{ id: 'rig', name: 'House', channelCount: 48 }],
      boxes: [{ id: 'box', rigId: 'rig', name: 'A' }],
      sockets: [{ id: 'socket', boxId: 'box', number: 1 }],
      days: [{ id: 'day', rigId: 'rig', name: 'Saturday' }],
      acts: [{ id: 'act', dayId: 'day', order: 0, name: 'Paper Herons' }],
      performers: [{ id: 'noor', actId: 'act', name: 'Noor' }],
      sources: [
        { id: 'vocal', actId: 'act', order: 0, name: 'Noor', kind: 'lead vocal', performerId: 'noor' },
        { id: 'keys-left', actId: 'act', order: 1, name: 'Keys L', kind: 'keys', pairSourceId: 'keys-right' },
        { id: 'keys-right', actId: 'act', order: 2, name: 'Keys R', kind: 'keys', pairSourceId: 'keys-left' },
      ],
      mixes: [{ id: 'mix', actId: 'act', order: 0, name: 'Mix 1', deviceKind: 'wedge', format: 'mono' }],
      listeners: [{ id: 'listener', mixId: 'mix', performerId: 'noor' }],
      wishes: [{ id: 'wish', mixId: 'mix', sourceId: 'vocal', amount: 'lots' }],
      copies: [],
      decisions: [
        { id: 'decision', actId: 'act', about: 'feed', mixId: 'mix', sourceId: 'vocal', purpose: 'foh' },
      ],
    }),
  );
}
