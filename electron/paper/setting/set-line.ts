import makeBidi from 'bidi-js';
import { type Face, shapesOf } from '../fonts/face.ts';
import type { Weight } from '../fonts/font-table.ts';
import type { Run, SetLine, TypeCase } from '../fonts/type-case.ts';

const bidi = makeBidi();

/** From the first sign that is written from right to left on (Hebrew, Arabic and their neighbours). */
const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]/;

/**
 * Sets one line: every sign in a face that has it, right-to-left words in their order. A sign that no face has is
 * told by its number, so that nothing vanishes.
 */
export function setLine(text: string, weight: Weight, typeCase: TypeCase): SetLine {
  return typeCase.remembered(text, weight, () => set(text, weight, typeCase));
}

function set(text: string, weight: Weight, typeCase: TypeCase): SetLine {
  const clean = spelledOut(text, weight, typeCase);
  const stretches = rightToLeft.test(clean) ? inVisualOrder(clean) : [clean];
  const runs = stretches.flatMap((stretch) => runsByFace(stretch, weight, typeCase));
  return { runs, unitWidth: runs.reduce((sum, run) => sum + run.unitWidth, 0) };
}

export function unitWidth(text: string, weight: Weight, typeCase: TypeCase): number {
  return setLine(text, weight, typeCase).unitWidth;
}

function spelledOut(text: string, weight: Weight, typeCase: TypeCase): string {
  let out = '';
  for (const sign of text.normalize('NFC')) {
    const codePoint = sign.codePointAt(0) ?? 0;
    if (isUnprintable(sign)) continue;
    out += typeCase.faceOf(codePoint, weight)
      ? sign
      : `[U+${codePoint.toString(16).toUpperCase().padStart(4, '0')}]`;
  }
  return out;
}

/** Controls and marks of direction: they say how to set, and are no signs themselves. */
function isUnprintable(sign: string): boolean {
  return /\p{Cc}|\p{Cf}|\ufe0e|\ufe0f/u.test(sign);
}

/** Stretches of one direction, from left to right on paper. Shaping turns the signs within a stretch itself. */
function inVisualOrder(text: string): string[] {
  const found = bidi.getEmbeddingLevels(text);
  const mirrored = bidi.getMirroredCharactersMap(text, found);
  const stretches: { text: string; level: number }[] = [];
  for (let at = 0; at < text.length; at++) {
    const level = found.levels[at] ?? 0;
    const sign = mirrored.get(at) ?? text[at] ?? '';
    const last = stretches.at(-1);
    if (last && last.level === level) last.text += sign;
    else stretches.push({ text: sign, level });
  }
  return reordered(stretches).map((it) => it.text);
}

/** Rule L2 of UAX 9, on stretches: from the highest level down to the lowest odd one, sequences are turned round. */
function reordered<T extends { level: number }>(stretches: T[]): T[] {
  const result = [...stretches];
  const highest = Math.max(...result.map((it) => it.level));
  for (let level = highest; level >= 1; level--)
    for (let at = 0; at < result.length; at++) {
      let end = at;
      while (end < result.length && (result[end]?.level ?? 0) >= level) end++;
      if (end > at + 1) result.splice(at, end - at, ...result.slice(at, end).reverse());
      at = Math.max(at, end - 1);
    }
  return result;
}

function runsByFace(text: string, weight: Weight, typeCase: TypeCase): Run[] {
  const runs: { face: Face; text: string }[] = [];
  for (const sign of text) {
    const last = runs.at(-1);
    const codePoint = sign.codePointAt(0) ?? 0;
    // A space, a full stop or an accent stays with the face of the word before it.
    const stays = last && /[\s\p{M}\p{P}]/u.test(sign) && last.face.font.hasGlyphForCodePoint(codePoint);
    const face = stays ? last.face : typeCase.faceOf(codePoint, weight);
    if (!face) continue;
    if (last && last.face === face) last.text += sign;
    else runs.push({ face, text: sign });
  }
  return inDirection(runs).map((run) => ({
    ...run,
    unitWidth: shapesOf(run.face, run.text).advanceWidth / 1000,
  }));
}

/** Runs of a right-to-left stretch follow each other from right to left. */
function inDirection<T extends { text: string }>(runs: T[]): T[] {
  const first = runs.find(({ text }) => /\p{L}/u.test(text));
  return first && rightToLeft.test(first.text) && runs.length > 1 ? runs.toReversed() : runs;
}
