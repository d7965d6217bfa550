import { readFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { gridFromFile } from '../../../electron/documents/grid-from-file.ts';

const workbook = readFileSync(new URL('../../fixtures/documents/merged-and-hidden.xlsx', import.meta.url));
const bytes = (text: string) => strToU8(text);
const wide = (text: string) => Buffer.from(text, 'utf16le');
const oldOffice = Buffer.concat([Buffer.from('d0cf11e0a1b11ae1', 'hex'), Buffer.alloc(600)]);

/** Bytes without any pattern, the same in every run (a linear congruential generator). */
function noise(count: number): Uint8Array {
  let state = 1;
  return Uint8Array.from({ length: count }, () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state >>> 24;
  });
}

/** A zip whose directory claims less than its part unpacks to. */
function liarZip(): Uint8Array {
  const zip = zipSync({ 'xl/workbook.xml': new Uint8Array(30_000_000) }, { level: 9 });
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  for (let at = 0; at < zip.length - 4; at += 1) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 100, true);
  }
  return zip;
}

describe('a file that is no rider is refused with what it is and what to ask for', () => {
  test.each([
    ['an empty file', new Uint8Array(0), /is empty/, /send the file again/],
    ['blank lines only', bytes('\n \r\n\t'), /is empty/, /send the file again/],
    ['only delimiters', bytes(';;;\n;;;\n;;;'), /is empty/, /send the file again/],
    ['bytes of no meaning', noise(50_000), /holds no text/, /XLSX, CSV/],
    [
      'a workbook cut off on its way',
      workbook.subarray(0, workbook.length / 2),
      /damaged or was cut off/,
      /send the file again/,
    ],
    [
      'a workbook with a broken middle',
      zipSync({ 'xl/workbook.xml': bytes('<workbook><sheets'), 'xl/_rels/workbook.xml.rels': bytes('<a') }),
      /damaged/,
      /send the file again/,
    ],
    [
      'a zip bomb',
      zipSync({ 'xl/workbook.xml': new Uint8Array(60_000_000) }, { level: 9 }),
      /unpacks to far more/,
      /Check that this is the rider/,
    ],
    ['a zip bomb that lies about its size', liarZip(), /damaged/, /send the file again/],
    ['an old workbook', Buffer.concat([oldOffice, wide('Workbook')]), /of the old kind/, /save it as XLSX/],
    [
      'a workbook with a password',
      Buffer.concat([oldOffice, wide('EncryptedPackage')]),
      /password/,
      /without a password/,
    ],
    ['RTF', bytes('{\\rtf1 Kick}'), /RTF/, /paste it here/],
    [
      'an OpenDocument sheet',
      zipSync({ mimetype: bytes('x'), 'content.xml': bytes('<x/>') }),
      /OpenDocument/,
      /save it as XLSX/,
    ],
    ['a picture', Buffer.from('89504e470d0a1a0a0000', 'hex'), /is a picture/, /as XLSX, CSV/],
    [
      'an archive of files',
      zipSync({ 'a/rider.pdf': bytes('x'), 'b.csv': bytes('x') }),
      /is an archive/,
      /Unpack it/,
    ],
    ['far too large a file', new Uint8Array(50_000_000), /has 48 MB/, /without pictures/],
    [
      'far too many lines',
      Buffer.alloc(20_000_000, '1,Kick,dyn\n'),
      /more than 5000 lines/,
      /Check that this is the rider/,
    ],
    [
      'ten thousand columns',
      bytes(`${'x,'.repeat(10_000)}\n${'y,'.repeat(10_000)}`),
      /10001 cells in line 1/,
      /Check that this is the rider/,
    ],
    [
      'one endless line',
      bytes('a'.repeat(2_000_000)),
      /32767 characters in line 1/,
      /Check that this is the rider/,
    ],
  ])('%s', async (_, content, what, todo) => {
    const outcome = await gridFromFile('rider', content);
    if (outcome.ok) expect.fail(`it was read: ${JSON.stringify(outcome.value).slice(0, 200)}`);
    expect(outcome.problem.what).toContain('rider');
    expect(outcome.problem.what).toMatch(what);
    expect(outcome.problem.todo).toMatch(todo);
  });
});

const merges = '<mergeCell ref="A1:A5000"/>'.repeat(20_000);
const mergedWorkbook = zipSync({
  'xl/workbook.xml': bytes('<workbook><sheets><sheet name="S" r:id="r1"/></sheets></workbook>'),
  'xl/_rels/workbook.xml.rels': bytes(
    '<Relationships><Relationship Id="r1" Type="x/worksheet" Target="worksheets/s.xml"/></Relationships>',
  ),
  'xl/worksheets/s.xml': bytes(`<worksheet><mergeCells>${merges}</mergeCells></worksheet>`),
});

test.each([
  ['a mail of half a million lines', Buffer.alloc(8_000_000, 'hello  world you\n'), /more than 5000 lines/],
  ['more merged ranges than a sheet has rows', mergedWorkbook, /more than 5000 merged ranges/],
  ['a page that never says a word', bytes(`<html>${'<style>a<td>'.repeat(100_000)}`), /is empty/],
])('%s is answered without looking at all of it', async (_, content, what) => {
  const outcome = await gridFromFile('rider', content);
  if (outcome.ok) expect.fail('it was read');
  expect(outcome.problem.what).toMatch(what);
});

describe('an unusual file that can be read is read whole', () => {
  test.each([
    [
      'a name of ten thousand characters',
      `1,${'n'.repeat(10_000)},dyn\n2,Kick,dyn\n3,Hat,dyn`,
      'n'.repeat(10_000),
    ],
    ['text from right to left', 'ch,source\n1,תוף בס\n2,سنير', 'תוף בס'],
    ['emoji', 'ch,source\n1,🥁 kick\n2,👩‍🎤 vocal', '👩‍🎤 vocal'],
    ['a cell with a line break', 'ch,source\n1,"Kick\nin"\n2,Snare', 'Kick\nin'],
    ['a cell that looks like a formula', 'ch,source\n1,"=HYPERLINK(""x"")"\n2,Snare', '=HYPERLINK("x")'],
  ])('%s', async (_, text, cell) => {
    const outcome = await gridFromFile('rider.csv', bytes(text));
    expect(outcome.ok && outcome.value.sheets[0]?.rows.flat()).toContain(cell);
  });
});

test('a reading that is stopped says so, and the next file is read', async () => {
  const control = new AbortController();
  const reading = gridFromFile('rider.xlsx', workbook, control.signal);
  control.abort();
  expect(await reading).toMatchObject({ ok: false, problem: { code: 'stopped' } });
  expect((await gridFromFile('rider.xlsx', workbook)).ok).toBe(true);
});

test('several files at once are all read', async () => {
  const names = ['a.csv', 'b.csv', 'c.csv'];
  const outcomes = await Promise.all(
    names.map((name) => gridFromFile(name, bytes(`ch,source\n1,${name}\n2,Kick`))),
  );
  expect(outcomes.map((it) => it.ok && it.value.name)).toEqual(names);
});
