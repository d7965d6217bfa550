/**
 * The fonts of the paper, all of open licence and from packages that carry it beside them. A sign is set in the
 * first font that has it. Atkinson Hyperlegible Next is also the face of the screens: it tells 0 from O and 1 from l.
 */
export type Weight = 'regular' | 'bold';

type FontFile = { name: string; files: Record<Weight, string> };

const atkinson = '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next';

/** Read at once: small, and nearly every sheet needs them. */
export const plainFonts: readonly FontFile[] = [
  {
    name: 'latin',
    files: { regular: `${atkinson}-latin-400-normal.woff`, bold: `${atkinson}-latin-700-normal.woff` },
  },
  {
    name: 'latin-ext',
    files: {
      regular: `${atkinson}-latin-ext-400-normal.woff`,
      bold: `${atkinson}-latin-ext-700-normal.woff`,
    },
  },
  {
    // Greek, Cyrillic, Arabic, Hebrew, flats and sharps, arrows.
    name: 'wide',
    files: {
      regular: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf',
      bold: 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf',
    },
  },
];

/** Read in pieces of some hundred signs, and only those that a set of sheets needs. */
export const eastAsianFonts = {
  sc: '@fontsource-variable/noto-sans-sc',
  jp: '@fontsource-variable/noto-sans-jp',
  kr: '@fontsource-variable/noto-sans-kr',
} as const;
export type EastAsian = keyof typeof eastAsianFonts;

export const wghtOfWeight: Record<Weight, number> = { regular: 400, bold: 700 };
