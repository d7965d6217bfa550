import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';
import type { SetLine } from '../setting/set-line.ts';
import { prepareEastAsian } from './east-asian.ts';
import { plainFonts, type Weight } from './font-table.ts';
import { unpackWoff } from './unpack-woff.ts';

const require = createRequire(import.meta.url);

/** Bounds the memory of a worker that lives long. */
const mostRemembered = 60_000;

export type Face = { name: string; bytes: Uint8Array; font: Font };

/** Figures of one width, so that columns of numbers stand in line. */
const figures = ['tnum'];

/**
 * What a text asks of its font; null: nothing. pdfkit keeps the shapes of words only where nothing is asked, and
 * lays text from right to left only as a whole, so each is asked for where it is needed.
 */
export function featuresOf(text: string): string[] | null {
  if (/\d/.test(text)) return figures;
  return /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]/.test(text) ? [] : null;
}

/**
 * The fonts at hand: which one has a sign, and how wide a text is. Kept over many sets, for reading fonts takes
 * longer than setting a page.
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
        this.#faces[weight].push({ name: `${name}-${weight}`, bytes, font: create(bytes) });
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
    for (const { weight, ...face } of pieces) this.#faces[weight].push(face);
    if (pieces.length === 0) return;
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

  /** Width of a text in one face at a size of 1 point. */
  unitWidth(face: Face, text: string): number {
    return face.font.layout(text, featuresOf(text) ?? []).advanceWidth / face.font.unitsPerEm;
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
