import { expect, test } from 'vitest';
import { bindings } from '../../../renderer/keys/bindings.ts';
import { cellCommands } from '../../../renderer/mixes/cell-keys.ts';
import { words } from '../../../renderer/wording/words.ts';

/** As the card writes a key: "Alt+ArrowUp" is "Alt+Up" there. */
const asOnCard = (key: string) => key.replace('Arrow', '');

test('every key of the mixes stands on the card of keys', () => {
  const card = bindings.filter(({ where }) => where === 'mixes');
  const isOnCard = (key: string) =>
    card.some(
      ({ id, keys }) => keys.includes(key) || (key.includes('+') && words.keyTexts[id].includes(key)),
    );
  const missing = Object.values(cellCommands)
    .flat()
    .filter((key) => !isOnCard(asOnCard(key)));
  expect(missing).toEqual([]);
});
