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
