import { globSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parseSync } from 'vite';
import { describe, expect, test } from 'vitest';

/**
 * Every text of the interface stands in `renderer/wording`, so that another language is another table. This reads
 * the page's sources and finds words of a language anywhere else: between tags, in what is read out or shown at a
 * field, and whole sentences in any string.
 */
const renderer = resolve(import.meta.dirname, '..', '..', '..', 'renderer');
const files = globSync('**/*.{ts,tsx}', { cwd: renderer }).filter(
  (file) => !/^(wording|dist|dist-shell|public)\/|vite\.config/.test(file.replaceAll('\\', '/')),
);

type Node = { type: string; [field: string]: unknown };
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const shownAttributes = new Set(['title', 'placeholder', 'alt', 'label', 'aria-label', 'aria-description']);
const hasWords = (text: string) => /\p{L}{2}/u.test(text);
/** Three words and more with a full stop, a question or an ellipsis at their end. */
const isSentence = (text: string) => /\p{L}+(?:[ ,:]+\S+){2,}\s*[.?!…]$/u.test(text.trim());

/** The texts of a source that belong into the table of words. `inKey`: inside of the sign for a key. */
function textsIn(node: Node, inKey = false): string[] {
  // What a bug says is for who mends it, and goes into the log.
  if (node.type === 'ThrowStatement' || node.type === 'ImportDeclaration') return [];
  const name = (it: unknown) => (isNode(it) ? String(it.name ?? '') : '');
  if (node.type === 'JSXText')
    return !inKey && hasWords(String(node.value)) ? [String(node.value).trim()] : [];
  if (node.type === 'JSXAttribute' && shownAttributes.has(name(node.name)) && isNode(node.value)) {
    const { type, value } = node.value;
    if (type === 'Literal' && typeof value === 'string' && hasWords(value)) return [value];
  }
  const own =
    node.type === 'Literal' && typeof node.value === 'string'
      ? node.value
      : node.type === 'TemplateElement'
        ? String((node.value as { cooked?: string }).cooked ?? '')
        : '';
  const isKey = node.type === 'JSXElement' && name((node.openingElement as Node).name) === 'kbd';
  const inside = Object.values(node)
    .flatMap((value) => (Array.isArray(value) ? value : [value]))
    .filter(isNode);
  return [...(isSentence(own) ? [own] : []), ...inside.flatMap((it) => textsIn(it, inKey || isKey))];
}

const textsOf = (file: string, source: string) => textsIn(parseSync(file, source).program as unknown as Node);

describe('words of a language stand in the table of words alone', () => {
  test.each(files)('%s', (file) => {
    expect(textsOf(file, readFileSync(join(renderer, file), 'utf8'))).toEqual([]);
  });
});

test.each([
  ['between tags', '<b>Listening to</b>', ['Listening to']],
  ['at a field', '<input placeholder="source or mix" />', ['source or mix']],
  ['as a sentence', 'tell(`This is no level.`)', ['This is no level.']],
  ['not as the name of a key', '<kbd>Esc</kbd>', []],
  ['not as a class', '<b className="mix head" />', []],
])('a text %s is seen by this test', (_, source, found) => {
  expect(textsOf('probe.tsx', source)).toEqual(found);
});
