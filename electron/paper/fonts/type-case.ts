import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';
import { prepareEastAsian } from './east-asian.ts';
import { plainFonts, type Weight } from './font-table.ts';

const require = createRequire(import.meta.url);

export type Face = { name: string; bytes: Uint8Array; font: Font };

/** Figures of one width everywhere, so that columns of numbers stand in line. */
export const features = ['tnum'];

/**
 * The fonts at hand: which one has a sign, and how wide a text is. Kept over many sets, for reading fonts takes
 * longer than setting a page.
 */
export class TypeCase {
  readonly #faces: Record<Weight, Face[]> = { regular: [], bold: [] };
  readonly #faceOfSign: Record<Weight, Map<number, Face | null>> = { regular: new Map(), bold: new Map() };
  readonly #widths = new Map<Face, Map<string, number>>();
  readonly #pieces = new Set<string>();

  constructor() {
    for (const weight of ['regular', 'bold'] as const)
      for (const { name, files } of plainFonts) {
        const bytes = readFileSync(require.resolve(files[weight]));
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
    if (pieces.length > 0) for (const signs of Object.values(this.#faceOfSign)) signs.clear();
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
    let widths = this.#widths.get(face);
    if (!widths || widths.size > 50_000) {
      widths = new Map();
      this.#widths.set(face, widths);
    }
    const known = widths.get(text);
    if (known !== undefined) return known;
    const width = face.font.layout(text, features).advanceWidth / face.font.unitsPerEm;
    widths.set(text, width);
    return width;
  }
}
