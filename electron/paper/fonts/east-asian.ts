import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create } from 'fontkit';
import subsetFont from 'subset-font';
import { type Face, openFace } from './face.ts';
import { type EastAsian, eastAsianFonts, type Weight, wghtOfWeight } from './font-table.ts';

const require = createRequire(import.meta.url);

export type PinnedFace = { weight: Weight; face: Face };

type Piece = { script: EastAsian; file: string; ranges: [number, number][] };

/**
 * The pieces of the East Asian fonts that hold the given signs, made ready for PDF. The packages hold variable fonts
 * that pdfkit cannot embed, so each piece is pinned to a weight. `known` remembers what was brought in before.
 */
export async function prepareEastAsian(
  signs: ReadonlySet<number>,
  known: Set<string>,
): Promise<PinnedFace[]> {
  const faces: PinnedFace[] = [];
  const lacking = new Set(signs);
  for (const script of scriptsFor(signs))
    for (const piece of piecesOf(script)) {
      const held = [...lacking].filter((sign) =>
        piece.ranges.some(([from, to]) => sign >= from && sign <= to),
      );
      if (held.length === 0 || known.has(piece.file)) continue;
      known.add(piece.file);
      const made = await pinned(piece);
      faces.push(...made);
      for (const sign of held)
        if (made.every(({ face }) => face.font.hasGlyphForCodePoint(sign))) lacking.delete(sign);
    }
  return faces;
}

/** Han signs look different in each script: kana call for the Japanese forms, hangul for the Korean ones. */
function scriptsFor(signs: ReadonlySet<number>): EastAsian[] {
  const all = [...signs];
  if (all.some((sign) => sign >= 0x3040 && sign <= 0x30ff)) return ['jp', 'kr', 'sc'];
  if (all.some((sign) => sign >= 0xac00 && sign <= 0xd7af)) return ['kr', 'sc', 'jp'];
  return ['sc', 'jp', 'kr'];
}

function piecesOf(script: EastAsian): Piece[] {
  const source = eastAsianFonts[script];
  const table = JSON.parse(readFileSync(require.resolve(`${source}/unicode.json`), 'utf8')) as Record<
    string,
    string
  >;
  const family = source.slice(source.lastIndexOf('/') + 1);
  return Object.entries(table).map(([name, ranges]) => ({
    script,
    file: `${source}/files/${family}-${name.replace(/[[\]]/g, '')}-wght-normal.woff2`,
    ranges: ranges.split(',').map(rangeOf),
  }));
}

/** "U+4e00-4eff" or "U+4e00". */
function rangeOf(text: string): [number, number] {
  const [from = '', to = from] = text.trim().slice(2).split('-');
  return [Number.parseInt(from, 16), Number.parseInt(to, 16)];
}

async function pinned({ file, script }: Piece): Promise<PinnedFace[]> {
  const bytes = readFileSync(require.resolve(file));
  const signs = String.fromCodePoint(...create(bytes).characterSet);
  return Promise.all(
    (['regular', 'bold'] as const).map(async (weight) => {
      const options = { targetFormat: 'truetype', variationAxes: { wght: wghtOfWeight[weight] } } as const;
      const pinnedBytes = await subsetFont(bytes, signs, options);
      const number = /-(\w+)-wght/.exec(file)?.[1] ?? '';
      return { weight, face: openFace(`${script}-${number}-${weight}`, pinnedBytes) };
    }),
  );
}
