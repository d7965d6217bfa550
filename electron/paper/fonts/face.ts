import { create, type Font, type Shapes } from 'fontkit';

/** A font of one weight, and the texts that were shaped in it. */
export type Face = { name: string; bytes: Uint8Array; font: Font; shapes: Map<string, Shapes> };

/** Figures of one width, so that columns of numbers stand in line. */
export const features = ['tnum'];

/** Bounds the memory of a worker that lives long. */
export const mostRemembered = 20_000;

export function openFace(name: string, bytes: Uint8Array): Face {
  return { name, bytes, font: create(bytes), shapes: new Map() };
}

/** The shapes of a text in one face, in thousandths of its size: once for measuring and for every document. */
export function shapesOf(face: Face, text: string): Shapes {
  const known = face.shapes.get(text);
  if (known) return known;
  if (face.shapes.size > mostRemembered) face.shapes.clear();
  const made = shape(face.font, text);
  face.shapes.set(text, made);
  return made;
}

function shape(font: Font, text: string): Shapes {
  const { glyphs, positions } = font.layout(text, features);
  const scale = 1000 / font.unitsPerEm;
  const scaled = glyphs.map((glyph, at) => {
    const { xAdvance = 0, yAdvance = 0, xOffset = 0, yOffset = 0 } = positions[at] ?? {};
    return {
      xAdvance: xAdvance * scale,
      yAdvance: yAdvance * scale,
      xOffset: xOffset * scale,
      yOffset: yOffset * scale,
      advanceWidth: glyph.advanceWidth * scale,
    };
  });
  return { glyphs, positions: scaled, advanceWidth: scaled.reduce((sum, it) => sum + it.xAdvance, 0) };
}
