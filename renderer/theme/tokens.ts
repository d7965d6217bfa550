/**
 * Every colour of the two themes. Hues start from the Okabe-Ito set (distinguishable with colour vision
 * deficiency) and are moved until they hold their contrast; a colour never carries a meaning without a letter,
 * word or shape beside it. Night has no pure white and no blue glow; Day is paper with heavy ink.
 */
export const themes = {
  night: {
    ground: '#14110e',
    raised: '#1e1a16',
    sunken: '#0d0b09',
    chosen: '#3a2c14',
    rule: '#3d352d',
    edge: '#8a7c6b',
    ink: '#f3e9db',
    quiet: '#c9bba8',
    accent: '#f2b347',
    onAccent: '#14110e',
    mustFix: '#ff9a6e',
    lookAgain: '#ecdc55',
    knowThis: '#67cfa9',
    copyFoh: '#d5c8b6',
    copyMonitors: '#f2b347',
    copyWedges: '#eda3cb',
    copyInEars: '#93cdec',
    copyParallel: '#ecdc55',
  },
  day: {
    ground: '#fdfaf3',
    raised: '#f3eee1',
    sunken: '#ffffff',
    chosen: '#fbe3ae',
    rule: '#cfc6b4',
    edge: '#756b59',
    ink: '#14110b',
    quiet: '#463e31',
    accent: '#6b3f00',
    onAccent: '#fdfaf3',
    mustFix: '#8a2500',
    lookAgain: '#574300',
    knowThis: '#00492f',
    copyFoh: '#40392d',
    copyMonitors: '#6b3f00',
    copyWedges: '#74205a',
    copyInEars: '#003f6b',
    copyParallel: '#574300',
  },
} as const satisfies Record<string, Record<string, `#${string}`>>;

export type ThemeName = keyof typeof themes;
export type ColourName = keyof (typeof themes)['night'];

/**
 * What is drawn on what. `arm's length`: read at a glance from the desk, so WCAG 2.2 AAA (7:1).
 * `near`: AA (4.5:1). `shape`: edges and marks that carry a meaning (3:1, WCAG 1.4.11).
 */
export const pairings: readonly {
  front: ColourName;
  back: ColourName;
  use: "arm's length" | 'near' | 'shape';
}[] = [
  { front: 'ink', back: 'ground', use: "arm's length" },
  { front: 'ink', back: 'raised', use: "arm's length" },
  { front: 'ink', back: 'sunken', use: "arm's length" },
  { front: 'ink', back: 'chosen', use: "arm's length" },
  { front: 'quiet', back: 'ground', use: "arm's length" },
  { front: 'quiet', back: 'raised', use: "arm's length" },
  { front: 'quiet', back: 'sunken', use: "arm's length" },
  { front: 'quiet', back: 'chosen', use: 'near' },
  { front: 'accent', back: 'ground', use: "arm's length" },
  { front: 'accent', back: 'raised', use: "arm's length" },
  { front: 'accent', back: 'chosen', use: 'near' },
  { front: 'onAccent', back: 'accent', use: "arm's length" },
  { front: 'ground', back: 'mustFix', use: "arm's length" },
  ...(['mustFix', 'lookAgain', 'knowThis'] as const).flatMap((front) =>
    (['ground', 'raised', 'sunken'] as const).map((back) => ({ front, back, use: "arm's length" }) as const),
  ),
  ...(['mustFix', 'lookAgain', 'knowThis'] as const).map(
    (front) => ({ front, back: 'chosen', use: 'near' }) as const,
  ),
  ...(['copyFoh', 'copyMonitors', 'copyWedges', 'copyInEars', 'copyParallel'] as const).flatMap((front) => [
    { front, back: 'ground', use: "arm's length" } as const,
    { front, back: 'raised', use: "arm's length" } as const,
    { front, back: 'chosen', use: 'near' } as const,
  ]),
  { front: 'edge', back: 'ground', use: 'shape' },
  { front: 'edge', back: 'raised', use: 'shape' },
  { front: 'edge', back: 'sunken', use: 'shape' },
];

const variable = (name: string) => `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

const declarations = (theme: ThemeName) =>
  Object.entries(themes[theme])
    .map(([name, value]) => `${variable(name)}:${value}`)
    .join(';');

/** The tokens as a style sheet: one block for each theme, chosen by `data-theme` on the root; paper is Day. */
export function themeSheet(): string {
  return [
    `:root{color-scheme:dark;${declarations('night')}}`,
    `:root[data-theme="day"]{color-scheme:light;${declarations('day')}}`,
    `@media print{:root,:root[data-theme]{color-scheme:light;${declarations('day')};--ground:#fff}}`,
  ].join('\n');
}
