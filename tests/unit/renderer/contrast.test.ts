import { globSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pairings, type ThemeName, themes } from '../../../renderer/theme/tokens.ts';

// Contrast ratio and relative luminance as defined in WCAG 2.2, section 1.4.3 and its glossary.
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [light = 0, dark = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light + 0.05) / (dark + 0.05);
}

const floor = { "arm's length": 7, near: 4.5, shape: 3 } as const;

test('the formula gives the ratios that WCAG names for black on white and for a colour on itself', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
  expect(contrast('#777777', '#777777')).toBe(1);
  // A grey often quoted as the darkest that fails AA on white: #777777 has 4.48, #767676 has 4.54.
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
});

describe.each(Object.keys(themes) as ThemeName[])('in the %s theme', (theme) => {
  test.each(pairings)('$front on $back is readable for $use', ({ front, back, use }) => {
    expect(contrast(themes[theme][front], themes[theme][back])).toBeGreaterThanOrEqual(floor[use]);
  });

  test('every colour that is drawn is in the table of pairings', () => {
    const drawn = new Set(pairings.flatMap(({ front, back }) => [front, back]));
    const decoration = new Set(['rule']); // Hairlines between rows carry no meaning.
    expect(
      Object.keys(themes[theme]).filter((name) => !drawn.has(name as never) && !decoration.has(name)),
    ).toEqual([]);
  });
});

test('the night theme has no pure white and no ground lighter than a dim room bears', () => {
  const night = Object.values(themes.night);
  expect(night).not.toContain('#ffffff');
  expect(luminance(themes.night.ground)).toBeLessThan(0.01);
});

describe('every colour that a style sheet puts on another is in the table of pairings', () => {
  const renderer = resolve(import.meta.dirname, '..', '..', '..', 'renderer');
  const sheets = globSync('**/*.css', { cwd: renderer }).filter((file) => !file.startsWith('dist'));
  const tokenName = (variable: string) =>
    variable.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  const isPaired = new Set(pairings.map(({ front, back }) => `${front} on ${back}`));

  const surfaces = new Set(['ground', 'raised', 'sunken', 'chosen']);
  const decoration = new Set(['rule']);

  /**
   * What a rule draws on what. Where it names one of the two, the other is the ink or the ground; a hue alone is a
   * shape on the ground, such as a bar.
   */
  function pairsOf(rule: string): string[] {
    const tokens = (properties: string) =>
      [...rule.matchAll(new RegExp(`(?:^|[;{\\s])(?:${properties}):\\s*var\\(--([\\w-]+)\\)`, 'g'))]
        .map(([, name = '']) => tokenName(name))
        .filter((name) => !decoration.has(name));
    const backs = tokens('background|background-color');
    const fronts = tokens('color');
    const shapes = [...tokens('fill|stroke'), ...(fronts.length > 0 ? [] : backs)].filter(
      (name) => !surfaces.has(name),
    );
    const on = backs.filter((name) => surfaces.has(name) || fronts.length > 0);
    const texts = fronts.length === 0 && on.length > 0 ? ['ink'] : fronts;
    return [
      ...texts.flatMap((front) => (on.length > 0 ? on : ['ground']).map((back) => `${front} on ${back}`)),
      ...shapes.map((shape) => `${shape} on ground`),
    ];
  }

  test.each(sheets)('%s', (file) => {
    const rules =
      readFileSync(join(renderer, file), 'utf8')
        .replace(/\/\*[\s\S]*?\*\//g, '')
        .match(/\{[^{}]*\}/g) ?? [];
    expect(rules.flatMap(pairsOf).filter((pair) => !isPaired.has(pair))).toEqual([]);
  });

  test('a pair that is in no table is seen', () => {
    expect(pairsOf('{ color: var(--must-fix); background: var(--accent); }')).toEqual(['mustFix on accent']);
    expect(isPaired.has('mustFix on accent')).toBe(false);
  });
});
