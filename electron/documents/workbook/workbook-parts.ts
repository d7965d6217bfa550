import { walkXml } from '../walk-xml.ts';

/** A sheet as the workbook lists it. */
export type SheetEntry = { name: string; hidden: boolean; part: string };

/** The sheets of a workbook in the order of its tabs, and whether its dates count from 1904. */
export function readSheetList(
  workbookXml: string,
  relationsXml: string,
): { sheets: SheetEntry[]; from1904: boolean } {
  const targets = new Map<string, string>();
  walkXml(relationsXml, {
    open: (name, attribute) => {
      const target = attribute('Target');
      const isSheet = attribute('Type')?.endsWith('/worksheet');
      if (name === 'Relationship' && target && isSheet) targets.set(attribute('Id') ?? '', partOf(target));
    },
  });
  const sheets: SheetEntry[] = [];
  let from1904 = false;
  walkXml(workbookXml, {
    open: (name, attribute) => {
      if (name === 'workbookPr') from1904 = isTrue(attribute('date1904'));
      if (name !== 'sheet') return;
      const part = targets.get(attribute('id') ?? '');
      const hidden = (attribute('state') ?? 'visible') !== 'visible';
      if (part) sheets.push({ name: attribute('name') ?? '', hidden, part });
    },
  });
  return { sheets, from1904 };
}

/** A relation's target is relative to the folder of the workbook, or begins at the root of the archive. */
function partOf(target: string): string {
  return target.startsWith('/') ? target.slice(1) : `xl/${target}`;
}

/** The texts that cells name by number. Readings of Asian text beside the text itself are left out. */
export function readSharedStrings(xml: string | null): string[] {
  const strings: string[] = [];
  if (!xml) return strings;
  let current = '';
  let inText = false;
  let inReading = 0;
  walkXml(xml, {
    open: (name) => {
      if (name === 'si') current = '';
      if (name === 'rPh') inReading += 1;
      if (name === 't') inText = true;
    },
    text: (text) => {
      if (inText && inReading === 0) current += text;
    },
    close: (name) => {
      if (name === 't') inText = false;
      if (name === 'rPh') inReading -= 1;
      if (name === 'si') strings.push(current);
    },
  });
  return strings;
}

/** The number format of each cell style: a format code, or the number of a built-in one. */
export function readCellFormats(xml: string | null): (string | number)[] {
  const codes = new Map<number, string>();
  const formats: (string | number)[] = [];
  let inCellStyles = false;
  if (!xml) return formats;
  walkXml(xml, {
    open: (name, attribute) => {
      if (name === 'numFmt') codes.set(Number(attribute('numFmtId')), attribute('formatCode') ?? 'General');
      if (name === 'cellXfs') inCellStyles = true;
      if (name !== 'xf' || !inCellStyles) return;
      const id = Number(attribute('numFmtId') ?? 0);
      formats.push(codes.get(id) ?? id);
    },
    close: (name) => {
      if (name === 'cellXfs') inCellStyles = false;
    },
  });
  return formats;
}

export function isTrue(value: string | undefined): boolean {
  return value === '1' || value === 'true';
}
