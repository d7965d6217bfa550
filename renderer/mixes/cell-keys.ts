import { isKey, type KeyPress } from '../keys/use-keys.ts';

/** What a key does with the chosen cells of the mixes. Keys are written as on the key card. */
export const cellCommands = {
  details: ['Enter'],
  edit: ['F2'],
  all: ['Ctrl+A'],
  'take out': ['Delete'],
  'put back': ['Backspace'],
  'fill down': ['Ctrl+D'],
  'fill right': ['Ctrl+R'],
  louder: ['Alt+ArrowUp'],
  quieter: ['Alt+ArrowDown'],
  'next copy': ['C'],
  'path of source': ['P'],
  'path of mix': ['Shift+P'],
  findings: ['F'],
  filter: ['/'],
  follow: ['W'],
  'hide sources': ['H'],
  'hide mixes': ['Shift+H'],
  'show all': ['U'],
} as const satisfies Record<string, readonly string[]>;

export type CellCommand = keyof typeof cellCommands;
const entries = Object.entries(cellCommands) as [CellCommand, readonly string[]][];

/** The command of a key press; null where it is none. */
export function commandOfKey(press: KeyPress): CellCommand | null {
  return entries.find(([, keys]) => keys.some((written) => isKey(press, written)))?.[0] ?? null;
}
