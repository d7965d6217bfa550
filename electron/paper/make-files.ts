import { type CoverEntry, cover } from '../../core/sheets/cover.ts';
import { type Edition, nextVersion, type Version, versionText } from '../../core/sheets/edition.ts';
import { sheetMaker } from '../../core/sheets/make-sheets.ts';
import type { PaperRequest } from '../../core/sheets/paper-request.ts';
import type { Sheet } from '../../core/sheets/sheet.ts';
import { shortName } from '../../core/sheets/short-name.ts';
import { viewDayOfShow } from '../../core/sheets/view-show.ts';
import type { Show } from '../../core/show/show.ts';
import { fileName } from './file-name.ts';
import type { TypeCase } from './fonts/type-case.ts';
import { drawPdf } from './pdf/draw-pdf.ts';
import { type LaidSheet, laySheet } from './setting/lay-sheet.ts';
import { setFoot } from './setting/set-foot.ts';
import { textsOf } from './setting/texts-of.ts';
import { writeCsv } from './tables/write-csv.ts';
import { writeXlsx } from './tables/write-xlsx.ts';

export type MadeFile = { name: string; bytes: Uint8Array };

/** What was made, and which version each sheet is, to be remembered once it is on paper. */
export type MadePaper = {
  files: MadeFile[];
  /** Pages of a PDF; 0 for other files. */
  pageCount: number;
  editions: { key: string; edition: Edition; isNew: boolean }[];
  /** Jobs for what is not in the show (any more). */
  missing: number;
};

export type PaperInput = {
  show: Show;
  request: PaperRequest;
  /** The last print of each sheet by its key. */
  lastEditions: ReadonlyMap<string, Edition>;
  now: Date;
  /** The time as it is printed. */
  madeAt: string;
};

export type Progress = (done: number, of: number, what: string) => void;

type Dated = { sheet: Sheet; version: Version };

/** Makes the files of a set of sheets. Pure but for the fonts that it reads. */
export async function makeFiles(
  input: PaperInput,
  typeCase: TypeCase,
  tell: Progress = () => {},
): Promise<MadePaper> {
  const { show, request, lastEditions, madeAt } = input;
  const make = sheetMaker(show, request.options);
  const sheets = request.jobs.flatMap((job) => make(job) ?? []);
  const dated = sheets.map((sheet) => ({
    sheet,
    version: nextVersion(sheet, lastEditions.get(sheet.key) ?? null, madeAt),
  }));
  const made = {
    editions: dated.map(({ sheet, version }) => ({
      key: sheet.key,
      edition: version.edition,
      isNew: version.isNew,
    })),
    missing: request.jobs.length - sheets.length,
  };
  if (request.file === 'pdf') {
    const { bytes, pageCount } = await pdfOf(dated, input, typeCase, tell);
    return { files: [{ name: `${nameOf(sheets)}.pdf`, bytes }], pageCount, ...made };
  }
  const files = request.file === 'xlsx' ? [xlsxOf(dated, request)] : csvOf(dated);
  tell(dated.length, dated.length, 'written');
  return { files, pageCount: 0, ...made };
}

async function pdfOf(dated: readonly Dated[], input: PaperInput, typeCase: TypeCase, tell: Progress) {
  await typeCase.prepare(textsOf(dated.map(({ sheet }) => sheet)));
  await typeCase.prepare(
    dated.flatMap(({ version }) => version.differences.gone.flatMap(({ texts }) => texts)),
  );
  const steps = dated.length * 2;
  const laid = dated.map(({ sheet, version }, at) => {
    tell(at, steps, `${sheet.subject}: ${sheet.title}`);
    const { differences, edition } = version;
    return laySheet(sheet, input.request.paper, differences, edition.before, typeCase);
  });
  const all = [...coverOf(laid, dated, input, typeCase), ...laid];
  const pageCount = all.reduce((sum, { pages }) => sum + pages.length, 0);
  setFeet(
    all,
    pageCount,
    new Map(dated.map(({ sheet, version }) => [sheet.key, versionText(version.edition)])),
    input.madeAt,
    typeCase,
  );
  const pages = all.flatMap((it) => it.pages);
  let drawn = 0;
  const info = { title: nameOf(dated.map(({ sheet }) => sheet)), madeAt: input.now };
  const bytes = await drawPdf(pages, info, () => {
    drawn++;
    tell(dated.length + (dated.length * drawn) / pages.length, steps, 'writing the pages');
  });
  return { bytes, pageCount };
}

/** The cover is laid twice: its own pages come before those it counts. */
function coverOf(
  laid: readonly LaidSheet[],
  dated: readonly Dated[],
  input: PaperInput,
  typeCase: TypeCase,
): LaidSheet[] {
  const dayId = input.request.coverOfDayId;
  const day = dayId === null ? null : viewDayOfShow(input.show, dayId);
  if (!day) return [];
  const nothing = { marks: new Map(), gone: [] };
  const lay = (firstPage: number) =>
    laySheet(cover(day, entriesFrom(laid, dated, firstPage)), input.request.paper, nothing, null, typeCase);
  return [lay(1 + lay(1).pages.length)];
}

function entriesFrom(laid: readonly LaidSheet[], dated: readonly Dated[], firstPage: number): CoverEntry[] {
  let page = firstPage;
  return laid.map(({ sheet, pages }, at) => {
    const entry = {
      key: sheet.key,
      title: sheet.title,
      subject: sheet.subject,
      page,
      version: String(dated[at]?.version.edition.number ?? ''),
    };
    page += pages.length;
    return entry;
  });
}

function setFeet(
  all: readonly LaidSheet[],
  pageCount: number,
  versions: ReadonlyMap<string, string>,
  madeAt: string,
  typeCase: TypeCase,
): void {
  let inSet = 0;
  for (const { sheet, pages } of all) {
    // Pages of labels have no head that says whose they are.
    const nameless = sheet.parts.some((part) => part.is === 'labels');
    pages.forEach((page, at) => {
      inSet++;
      const own = `Page ${at + 1} of ${pages.length}`;
      const foot = all.length === 1 ? own : `${own}, in the set ${inSet} of ${pageCount}`;
      const version = versions.get(sheet.key) ?? `Made ${madeAt}`;
      setFoot(
        page,
        {
          version: nameless
            ? `${shortName(sheet.subject, (it) => it.length <= 40)}, ${sheet.title}. ${version}`
            : version,
          page: foot,
        },
        typeCase,
      );
    });
  }
}

function xlsxOf(dated: readonly Dated[], { paper }: PaperRequest): MadeFile {
  const sheets = dated.map(({ sheet, version }) => ({
    sheet,
    version: versionText(version.edition),
  }));
  return { name: `${nameOf(dated.map(({ sheet }) => sheet))}.xlsx`, bytes: writeXlsx(sheets, paper) };
}

function csvOf(dated: readonly Dated[]): MadeFile[] {
  const taken = new Set<string>();
  return dated.flatMap(({ sheet }) =>
    writeCsv(sheet).map(({ name, text }) => ({
      name: `${unusedName(fileName([sheet.subject, sheet.title, name]), taken)}.csv`,
      bytes: Buffer.from(text, 'utf8'),
    })),
  );
}

/** Two acts may have one name; their files may not. */
function unusedName(wanted: string, taken: Set<string>): string {
  for (let number = 1; ; number++) {
    const name = number === 1 ? wanted : `${wanted} ${number}`;
    if (taken.has(name.toLowerCase())) continue;
    taken.add(name.toLowerCase());
    return name;
  }
}

/** One sheet is called by what it is, many by whose they are. */
function nameOf(sheets: readonly Sheet[]): string {
  const [first] = sheets;
  if (!first) return 'No sheet';
  return sheets.length === 1 ? fileName([first.subject, first.title]) : fileName([first.subject, 'sheets']);
}
