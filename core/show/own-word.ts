import { z } from 'zod';
import { Id, shortText } from './rig.ts';
import { sourceGroups, sourceKinds } from './source-kinds.ts';
import { amounts, deviceKinds } from './words.ts';

/** Words of a wish that stand for many lines: the groups of sources, and what riders say besides. */
export const taughtGroups = [
  'everything',
  'lead vocals',
  'backing vocals',
  'rhythm',
  ...sourceGroups,
] as const;

/**
 * What a taught word can be of, and what it can mean there; null: a name, as of a performer or of a line. Lines are
 * named as the list has them, several with semicolons between.
 */
export const meaningsOf = {
  source: sourceKinds,
  group: taughtGroups,
  lines: null,
  performer: null,
  device: deviceKinds,
  amount: amounts,
} as const satisfies Record<string, readonly string[] | null>;

export type MeaningOf = keyof typeof meaningsOf;
const meaningKinds = Object.keys(meaningsOf) as [MeaningOf, ...MeaningOf[]];

/** What a taught word means: a kind of source, many lines, a performer, what is listened through, or how much. */
export type Meaning = { of: MeaningOf; kind: string };

/** Whether there is such a meaning. */
function isMeaning({ of, kind }: Meaning): boolean {
  const known: readonly string[] | null = meaningsOf[of];
  return known === null || known.includes(kind);
}

/** A word that the engineer taught: in riders of this band, or of all, it means this. */
export const OwnWord = z
  .strictObject({
    id: Id,
    /** As riders write it; case, accents and marks are no difference. */
    words: shortText.min(1),
    of: z.enum(meaningKinds).default('source'),
    /** One of `meaningsOf`, or a name. */
    kind: shortText.min(1),
    /** Name of the band in whose riders it holds; empty: in those of every band. */
    band: shortText.default(''),
    /** The act it was taught on: there it holds also after the act was renamed. */
    actId: Id.nullable().default(null),
  })
  .refine(isMeaning, { error: 'A taught word means something that is not known here.', path: ['kind'] });
export type OwnWord = z.infer<typeof OwnWord>;
