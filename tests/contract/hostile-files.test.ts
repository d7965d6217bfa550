import { existsSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { gridFromFile } from '../../electron/documents/grid-from-file.ts';
import { limits } from '../../electron/documents/limits.ts';
import { exchangeOfText } from '../../electron/exchange/exchange-of-text.ts';

/** Room for what the test itself and the start of a worker take, beside what a file may cost. */
const slackMb = 200;
const slackMs = 6_000;

const sheet = (xml: string) =>
  zipSync({
    'xl/workbook.xml': strToU8('<workbook><sheets><sheet name="S" r:id="r1"/></sheets></workbook>'),
    'xl/_rels/workbook.xml.rels': strToU8(
      '<Relationships><Relationship Id="r1" Type="x/worksheet" Target="worksheets/s.xml"/></Relationships>',
    ),
    'xl/worksheets/s.xml': strToU8(xml),
  });

/** Ten entities, each ten times the one before: a billion letters where a reader expands them. */
function billionLetters(): string {
  const names = [...'abcdefghij'];
  const entities = names.map((name, at) => {
    const before = names[at - 1];
    return `<!ENTITY ${name} "${before ? `&${before};`.repeat(10) : 'lolololol'}">`;
  });
  return `<!DOCTYPE z [${entities.join('')}]><worksheet><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>&j;</t></is></c></row></sheetData></worksheet>`;
}

/** A PDF of one page whose content is `content`, with a table of objects that readers mend. */
function pdf(content: string, more = ''): Uint8Array {
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 600 800] /Contents 4 0 R /Resources << /XObject << /X 5 0 R >> >> >>',
    `<< /Length ${content.length} >>\nstream\n${content}\nendstream`,
    '<< /Type /XObject /Subtype /Form /BBox [0 0 1 1] /Resources << /XObject << /X 5 0 R >> >> /Length 5 >>\nstream\n/X Do\nendstream',
  ];
  const body = objects.map((it, at) => `${at + 1} 0 obj\n${it}\nendobj\n`).join('');
  return strToU8(`%PDF-1.7\n${body}${more}trailer << /Root 1 0 R /Size 6 >>\n%%EOF`);
}

/** Five pieces of nested pages, the last of which leads back to the first. */
const pagesInCircle = strToU8(
  '%PDF-1.7\n1 0 obj\n<< /Type /Catalog /Pages 2 0 R >>\nendobj\n2 0 obj\n<< /Type /Pages /Kids [3 0 R] /Count 9 >>\nendobj\n3 0 obj\n<< /Type /Pages /Kids [2 0 R] /Count 9 >>\nendobj\ntrailer << /Root 1 0 R >>\n%%EOF',
);

const hostile: readonly [what: string, content: () => Uint8Array][] = [
  [
    'a workbook of zeros without end',
    () => zipSync({ 'xl/workbook.xml': new Uint8Array(90_000_000) }, { level: 9 }),
  ],
  [
    'a hundred parts that are too much only together',
    () =>
      zipSync(
        Object.fromEntries(
          Array.from({ length: 100 }, (_, at) => [`xl/worksheets/s${at}.xml`, new Uint8Array(4_000_000)]),
        ),
        { level: 9 },
      ),
  ],
  ['an archive in an archive in an archive', () => nested(30)],
  [
    'an archive with names that lead out of it',
    () =>
      zipSync({
        '../../../../tmp/foldbook-was-here': strToU8('x'),
        'xl/workbook.xml': strToU8('<workbook/>'),
        '/etc/foldbook-was-here': strToU8('x'),
      }),
  ],
  ['entities that make a billion letters', () => sheet(billionLetters())],
  [
    'an entity that reads a file',
    () =>
      sheet(
        '<!DOCTYPE z [<!ENTITY f SYSTEM "file:///etc/hostname">]><worksheet><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>&f;</t></is></c></row></sheetData></worksheet>',
      ),
  ],
  ['XML a million deep', () => sheet(`${'<a>'.repeat(1_000_000)}${'</a>'.repeat(1_000_000)}`)],
  [
    'a cell at the far end of the sheet',
    () =>
      sheet(
        '<worksheet><sheetData><row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData></worksheet>',
      ),
  ],
  ['a PDF of brackets a million deep', () => pdf('['.repeat(1_000_000))],
  ['a PDF of objects a hundred thousand deep', () => pdf('', `6 0 obj\n${'<< /A '.repeat(100_000)}`)],
  ['a PDF whose form draws itself', () => pdf('/X Do')],
  ['a PDF whose pages run in a circle', () => pagesInCircle],
  ['a PDF with a million saved states', () => pdf('q '.repeat(1_000_000))],
  ['a page of tables in tables', () => strToU8(`<html>${'<table><tr><td>'.repeat(200_000)}`)],
  ['a mail of parts in parts', () => mailInMail(3_000)],
  ['a text of nothing but quotes', () => strToU8('"'.repeat(4_000_000))],
];

function nested(depth: number): Uint8Array {
  let inside: Uint8Array = new Uint8Array(1_000_000);
  for (let at = 0; at < depth; at++) inside = zipSync({ 'xl/workbook.xml': inside }, { level: 9 });
  return inside;
}

function mailInMail(depth: number): Uint8Array {
  const parts = Array.from(
    { length: depth },
    (_, at) => `Content-Type: multipart/mixed; boundary="b${at}"\r\n\r\n--b${at}\r\n`,
  );
  return strToU8(`From: a@example.org\r\nSubject: x\r\nMIME-Version: 1.0\r\n${parts.join('')}\r\n1,Kick`);
}

test.each(hostile)(
  '%s gets its answer in bounded time and memory, and writes nothing',
  async (what, content) => {
    const file = content();
    const before = process.memoryUsage.rss();
    const started = performance.now();
    let most = before;
    const watch = setInterval(() => {
      most = Math.max(most, process.memoryUsage.rss());
    }, 10);
    const outcome = await gridFromFile('rider', file);
    clearInterval(watch);
    const ms = performance.now() - started;
    const grownMb = (Math.max(most, process.memoryUsage.rss()) - before) / 2 ** 20;
    const answer = outcome.ok ? 'read as text' : outcome.problem.what.slice(0, 90);
    console.log(`${what}: ${ms.toFixed(0)} ms, +${grownMb.toFixed(0)} MB, ${answer}`);
    if (!outcome.ok) expect(outcome.problem.code).not.toBe('internal error');
    if (outcome.ok) expect(JSON.stringify(outcome.value).length).toBeLessThan(40_000_000);
    expect(ms).toBeLessThan(limits.readingMs + slackMs);
    expect(grownMb).toBeLessThan(limits.growthMb + slackMb);
    for (const path of ['/tmp/foldbook-was-here', '/etc/foldbook-was-here'])
      expect(existsSync(path)).toBe(false);
  },
  40_000,
);

test.each([
  ['brackets a million deep', '['.repeat(1_000_000)],
  ['lists a hundred thousand deep', `${'['.repeat(100_000)}${']'.repeat(100_000)}`],
  [
    'a field that would change every object',
    '{"__proto__":{"ok":true},"format":"foldbook-show","version":1}',
  ],
  [
    'the constructor of every object',
    '{"constructor":{"prototype":{"ok":true}},"format":"foldbook-show","version":1}',
  ],
  ['a number beyond all numbers', '{"format":"foldbook-show","version":1e999}'],
])('a show file with %s is refused with a sentence', (_what, text) => {
  const outcome = exchangeOfText('The file', text);
  // What is named __proto__ in JSON is a field like any other; a strict shape has no room for it.
  expect(outcome).toMatchObject({ ok: false, problem: { code: 'not a show' } });
  expect(({} as Record<string, unknown>).ok).toBeUndefined();
});
