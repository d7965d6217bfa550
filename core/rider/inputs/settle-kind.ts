import type { SourceKind } from '../../show/source-kinds.ts';
import type { Work, WorkInput } from '../page/work.ts';

/** The lines that are taken for a kind so far. */
export const ofKind = (work: Work, kind: SourceKind): WorkInput[] =>
  work.inputs.filter((input) => input.read.kind === kind);

/** Takes a line for a kind, with no more certainty than it had. */
export function lower(input: WorkInput, kind: SourceKind, certainty: number): void {
  input.read.kind = kind;
  input.read.kindConfidence = Math.min(input.read.kindConfidence, certainty);
}
