import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareEastAsian } from './east-asian.ts';
import { type Face, mostRemembered, openFace } from './face.ts';
import { plainFonts, type Weight } from './font-table.ts';
import { unpackWoff } from './unpack-woff.ts';

const require = createRequire(import.meta.url);

/** Signs of one face beside each other; `text` is in reading order, runs are in the order they stand on paper. */
export type Run = { face: Face; text: string; unitWidth: number };

/** One line of text ready to be placed; widths are for a size of 1 point. */
export type SetLine = { runs: Run[]; unitWidth: number };

/**
 * The fonts at hand: which one has a sign, and lines that were set in them. Kept over many sets, for reading fonts
 * and shaping words takes longer than setting a page.
 */
export class TypeCase {
  readonly #faces: Record<Weight, Face[]> = { regular: [], bold: [] };
  readonly #faceOfSign: Record<Weight, Map<number, Face | null>> = { regular: new Map(), bold: new Map() };
  readonly #lines: Record<Weight, Map<string, SetLine>> = { regular: new Map(), bold: new Map() };
  readonly #pieces = new Set<string>();

  constructor() {
    for (const weight of ['regular', 'bold'] as const)
      for (const { name, files } of plainFonts) {
        const bytes = unpackWoff(readFileSync(require.resolve(files[weight])));
        this.#faces[weight].push(openFace(`${name}-${weight}`, bytes));
      }
  }

  /** Brings in the fonts of signs that the plain ones lack. To be awaited before anything is measured. */
  async prepare(texts: Iterable<string>): Promise<void> {
    const lacking = new Set<number>();
    for (const text of texts)
      for (const sign of text) {
        const codePoint = sign.codePointAt(0) ?? 0;
        if (codePoint > 0x2e7f && this.faceOf(codePoint, 'regular') === null) lacking.add(codePoint);
      }
    if (lacking.size === 0) return;
    const pieces = await prepareEastAsian(lacking, this.#pieces);
    if (pieces.length === 0) return;
    for (const { weight, face } of pieces) this.#faces[weight].push(face);
    for (const weight of ['regular', 'bold'] as const) {
      this.#faceOfSign[weight].clear();
      this.#lines[weight].clear();
    }
  }

  /** The face that has a sign, or null where none has. */
  faceOf(codePoint: number, weight: Weight): Face | null {
    const known = this.#faceOfSign[weight].get(codePoint);
    if (known !== undefined) return known;
    const found = this.#faces[weight].find(({ font }) => font.hasGlyphForCodePoint(codePoint)) ?? null;
    this.#faceOfSign[weight].set(codePoint, found);
    return found;
  }

  /** A line that was set before, or the one that `make` sets now. The same words stand on many sheets. */
  remembered(text: string, weight: Weight, make: () => SetLine): SetLine {
    const lines = this.#lines[weight];
    const known = lines.get(text);
    if (known) return known;
    if (lines.size > mostRemembered) lines.clear();
    const made = make();
    lines.set(text, made);
    return made;
  }
}
