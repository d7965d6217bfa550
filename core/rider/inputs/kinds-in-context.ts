import type { Work } from '../page/work.ts';
import {
  settleHalves,
  settlePads,
  settleSmallPercussion,
  settleSurdos,
  settleTimbales,
  settleTomRows,
  settleTomSizes,
  settleToms,
} from './drum-kinds.ts';
import {
  settleChoir,
  settleConductors,
  settleRappers,
  settleSoloists,
  settleSpeech,
  settleTalk,
} from './spoken-kinds.ts';
import {
  settleBass,
  settleBasses,
  settleDoubleBass,
  settleGuitars,
  settlePianos,
  settleSaxes,
  settleViolas,
} from './tuned-kinds.ts';
import { settleVocals } from './voices.ts';

/** Settles kinds that only the other lines of the rider tell. */
export function settleKindsInContext(work: Work): void {
  settleChoir(work);
  settleHalves(work);
  settleSurdos(work);
  settleSmallPercussion(work);
  settleTimbales(work);
  settleTomRows(work);
  settleTomSizes(work);
  settleToms(work);
  settleDoubleBass(work);
  settleViolas(work);
  settleSaxes(work);
  settleBasses(work);
  settleSoloists(work);
  settlePianos(work);
  settleBass(work);
  settleRappers(work);
  settleSpeech(work);
  settleVocals(work);
  settleGuitars(work);
  settleConductors(work);
  settleTalk(work);
  settlePads(work);
}
