declare module 'pdfkit' {
  /** What is used of pdfkit. Lengths are points, from the top left. */
  export default class PDFDocument {
    constructor(options: {
      autoFirstPage: boolean;
      info: Record<string, string | Date>;
      lang: string;
      pdfVersion: string;
    });
    registerFont(name: string, source: Uint8Array): this;
    addPage(options: { size: [number, number]; margin: number }): this;
    font(name: string): this;
    /** The font set last. Not in pdfkit's documentation: see where it is used. */
    _font: { layoutRun(text: string, features: string[]): import('fontkit').Shapes };
    fontSize(size: number): this;
    text(
      text: string,
      x: number,
      y: number,
      options: {
        lineBreak: false;
        baseline: 'alphabetic';
        features: string[];
        textWidth: number;
        wordCount: number;
      },
    ): this;
    rect(x: number, y: number, width: number, height: number): this;
    circle(x: number, y: number, radius: number): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    closePath(): this;
    lineWidth(width: number): this;
    dash(length: number, options: { space: number }): this;
    undash(): this;
    fillColor(colour: string): this;
    strokeColor(colour: string): this;
    fill(): this;
    stroke(): this;
    fillAndStroke(): this;
    on(event: 'data', take: (bytes: Uint8Array) => void): this;
    on(event: 'end', take: () => void): this;
    on(event: 'error', take: (error: Error) => void): this;
    end(): void;
  }
}

declare module 'fontkit' {
  export type Glyph = { id: number; advanceWidth: number; codePoints: number[] };
  export type Position = { xAdvance: number; yAdvance: number; xOffset: number; yOffset: number };
  /** Glyphs of a text in the order they stand, in thousandths of the size, as pdfkit lays them. */
  export type Shapes = {
    glyphs: Glyph[];
    positions: (Position & { advanceWidth: number })[];
    advanceWidth: number;
  };
  export type Font = {
    unitsPerEm: number;
    characterSet: number[];
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(text: string, features: string[]): { glyphs: Glyph[]; positions: Position[] };
  };
  export function create(bytes: Uint8Array): Font;
}

declare module 'subset-font' {
  export default function subsetFont(
    bytes: Uint8Array,
    text: string,
    options: { targetFormat: 'truetype'; variationAxes: Record<string, number> },
  ): Promise<Uint8Array>;
}

declare module 'bidi-js' {
  export type Levels = { levels: Uint8Array; paragraphs: { start: number; end: number; level: number }[] };
  export default function makeBidi(): {
    getEmbeddingLevels(text: string, base?: 'ltr' | 'rtl'): Levels;
    getMirroredCharactersMap(text: string, levels: Levels): Map<number, string>;
  };
}
