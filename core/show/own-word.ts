import { z } from 'zod';
import { Id, shortText } from './rig.ts';
import { SourceKind } from './source-kinds.ts';

/** A word that the engineer taught: in riders of this band, or of all, it means this kind of source. */
export const OwnWord = z.strictObject({
  id: Id,
  /** As riders write it; case, accents and marks are no difference. */
  words: shortText.min(1),
  kind: SourceKind,
  /** Name of the band in whose riders it holds; empty: in those of every band. */
  band: shortText.default(''),
  /** The act it was taught on: there it holds also after the act was renamed. */
  actId: Id.nullable().default(null),
});
export type OwnWord = z.infer<typeof OwnWord>;
