import { expect, test } from 'vitest';
import { readDocument } from '../../../electron/documents/read-document.ts';

async function rowsOf(text: string): Promise<string[][]> {
  const outcome = await readDocument('mail.eml', Buffer.from(text));
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value.sheets.flatMap((sheet) => sheet.rows).filter((row) => row.join('') !== '');
}

test('a saved mail gives its subject, its text in letters, and names what is attached', async () => {
  const mail = `Received: from a by b; Mon, 1 Jun 2026 10:00:00 +0200
From: "Toni" <toni@example.org>
Subject: =?utf-8?Q?Rider_f=C3=BCr_Samstag?=
MIME-Version: 1.0
Content-Type: multipart/mixed; boundary="b1"

--b1
Content-Type: text/plain; charset=iso-8859-1
Content-Transfer-Encoding: quoted-printable

1  Kick in    dyn
2  Fl=F6te     Kondensator
--b1
Content-Type: application/pdf; name="plot.pdf"
Content-Disposition: attachment; filename="plot.pdf"
Content-Transfer-Encoding: base64

JVBERi0=
--b1--
`;
  expect(await rowsOf(mail)).toEqual([
    ['Rider für Samstag'],
    ['1', 'Kick in', 'dyn'],
    ['2', 'Flöte', 'Kondensator'],
    ['Attached to the mail, not read: plot.pdf. Bring it in on its own.'],
  ]);
});

const table =
  '<html><head><title>x</title></head><body><p>Our list &amp; wishes:</p><table><tr><th>1</th><td>Kick</td></tr>' +
  '<tr>\n<td>2</td>\n<td>Fl&#246;te</td></tr></table></body></html>';
const rowsOfTable = [['Our list & wishes:'], ['1', 'Kick'], ['2', 'Flöte']];

test('a mail that is only formatted keeps the cells of its table', async () => {
  const head =
    'From: t@example.org\nSubject: list\nMIME-Version: 1.0\nContent-Type: text/html; charset=utf-8\n\n';
  expect(await rowsOf(head + table)).toEqual([['list'], ...rowsOfTable]);
});

test('a saved page, also one that calls itself a workbook, keeps the cells of its table', async () => {
  expect(await rowsOf(table)).toEqual(rowsOfTable);
});

test('a pasted text with the head of a mail copied into it is plain text', async () => {
  expect(await rowsOf('From: Toni\nSubject: rider\n\nKick')).toEqual([
    ['From: Toni'],
    ['Subject: rider'],
    ['Kick'],
  ]);
});
