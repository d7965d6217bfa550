import { readFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { gridFromFile } from '../../../electron/documents/grid-from-file.ts';

async function sheetsOf(bytes: Uint8Array, fileName = 'rider.xlsx') {
  const outcome = await gridFromFile(fileName, bytes);
  if (!outcome.ok) throw new Error(outcome.problem.what);
  return outcome.value.sheets;
}

const fixture = (name: string) => readFileSync(new URL(`../../fixtures/documents/${name}`, import.meta.url));

/** The smallest workbook that holds the given XML of one sheet. */
function workbook(sheetXml: string): Uint8Array {
  return zipSync({
    'xl/workbook.xml': strToU8(
      '<workbook><sheets><sheet name="S" sheetId="1" r:id="r1"/></sheets></workbook>',
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      '<Relationships><Relationship Id="r1" Type="x/worksheet" Target="worksheets/sheet1.xml"/></Relationships>',
    ),
    'xl/worksheets/sheet1.xml': strToU8(`<worksheet>${sheetXml}</worksheet>`),
  });
}

test('a workbook shows its visible cells as a person sees them, and names what it hides', async () => {
  expect(await sheetsOf(fixture('merged-and-hidden.xlsx'))).toEqual([
    {
      name: 'Inputs',
      rows: [
        ['Harbour Lights - tech rider'],
        ['valid from', '14.05.2026'],
        [],
        ['Ch', 'Source', 'Mic / DI', '48V', 'Player'],
        ['1', 'Kick in', 'boundary', 'TRUE', 'Ilvo'],
        ['2', 'Kick out', 'dynamic', '', 'Ilvo'],
        ['3', 'Snare top', 'dynamic', '', 'Ilvo'],
        [],
        ['5', 'Bass & synth <DI>', 'DI', 'FALSE', 'Bea'],
        [],
        [],
        ['50%', '18.50', '18:30', '#N/A', 'plot'],
      ],
    },
    {
      name: 'Monitors',
      rows: [
        ['Mix', 'Who', 'Wish'],
        ['1', 'Ilvo', 'lots of click\nsome bass'],
      ],
    },
    {
      name: 'Not shown in the workbook',
      rows: [
        ['Hidden column “old no.” of the sheet “Inputs” with 6 cells, not read'],
        ['Hidden row 8 of the sheet “Inputs”, not read: 4, Old keys, DI, Bea'],
        ['Hidden sheet “Lists” with 2 lines, not read'],
      ],
    },
  ]);
});

test('a workbook of another program: dates from 1904, a formula nobody has worked out, other scripts', async () => {
  expect(await sheetsOf(fixture('dates-from-1904.xlsx'))).toEqual([
    {
      name: 'Entrées',
      rows: [
        ['Tranche', 'Source', 'Date'],
        ['1', 'Grosse caisse int.', '2026-05-14'],
        ['=A2+1', 'Caisse claire', '2026-05-14'],
        ['3', 'Chant 🎤 עברית', '2026-05-14'],
      ],
    },
    { name: 'Retours', rows: [[], [], ['', 'bain de pied']] },
    {
      name: 'Not shown in the workbook',
      rows: [['Hidden column “secret” of the sheet “Entrées” with 2 cells, not read']],
    },
  ]);
});

test('a note on a cell is a line of its own', async () => {
  const sheets = await sheetsOf(fixture('note-on-a-cell.xlsx'));
  expect(sheets[1]).toEqual({
    name: 'Notes and text boxes',
    rows: [['Note on cell B2: we bring our own microphone']],
  });
});

test('a workbook is read whatever its file is called', async () => {
  expect((await sheetsOf(fixture('dates-from-1904.xlsx'), 'rider.csv')).length).toBe(3);
});

test('cells without references stand in the order they are written', async () => {
  const xml = '<sheetData><row><c t="inlineStr"><is><t>Kick</t></is></c><c><v>2</v></c></row></sheetData>';
  expect((await sheetsOf(workbook(xml)))[0]?.rows).toEqual([['Kick', '2']]);
});

test('a bomb of XML entities stays text and is not expanded', async () => {
  const bomb = '<!DOCTYPE z [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>';
  const xml = `${bomb}<sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>x&b;&b;</t></is></c></row></sheetData>`;
  const rows = (await sheetsOf(workbook(xml)))[0]?.rows ?? [];
  expect(rows.flat().join('').length).toBeLessThan(20);
});
