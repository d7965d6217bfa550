import { describe, expect, test } from 'vitest';
import { readRider } from '../../../core/rider/read-rider.ts';
import type { Reading } from '../../../core/rider/reading.ts';

const list = ['', 'Input list', '1 Kick - dynamic mic', '2 Lead vocal - dynamic vocal mic'];

/** A rider as text with these lines over its list; a line with bars is a row of cells. */
const readUnder = (...head: string[]): Reading =>
  readRider({
    name: 'pasted text.txt',
    form: 'text',
    sheets: [{ name: '', rows: [...head, ...list].map((line) => line.split('|').map((it) => it.trim())) }],
  });

describe('a band is called by what the top of its rider says', () => {
  test.each([
    ['alone in the first line', ['Paper Herons']],
    ['under the bare title', ['Tech rider v3.2', 'Paper Herons']],
    ['before the title', ['PAPER HERONS - TECH RIDER']],
    ['before the name of the list', ['Paper Herons – inputs']],
    ['behind a label', ['Band: Paper Herons']],
    ['in a form', ['Item | Entry', 'Band | Paper Herons']],
    ['beside a date', ['Technical Rider', 'Band: Paper Herons | Date: 03/2031']],
    ['in a sentence', ['Hi there,', 'here is the input list for Paper Herons:']],
    ['as "we are"', ['Dear all, we are Paper Herons and this is what we need.']],
    ['in German', ['Hallo, wir sind Paper Herons.']],
    ['in the subject of a mail', ['Subject: Fwd: Rider Paper Herons', 'Hello,']],
    ['in quotes beside a title', ['SUBJECT: input list "Paper Herons"']],
  ])('%s', (_, head) => {
    const { actName, inputs } = readUnder(...head);
    expect(actName?.toLowerCase()).toBe('paper herons');
    expect(inputs).toHaveLength(2);
  });

  test('and the line says that it was taken for the name', () => {
    expect(readUnder('Paper Herons').lines[0]?.why).toBe('The name of the act.');
  });

  test.each([
    ['a title of a section', ['Monitors']],
    ['a source', ['Kick']],
    ['a sentence', ['Hallo,', 'anbei unser Rider.', 'Viele Grüße']],
    ['a greeting', ['Hello Marguerite,']],
    ['the title of a rider', ['Technical Rider']],
    ['a head of columns', ['Ch   Source   Mic']],
    ['who plays', ['Line-up', 'Mara Quint - vocals']],
    ['nothing', []],
  ])('but %s is no name', (_, head) => {
    expect(readUnder(...head).actName).toBe(null);
  });
});
