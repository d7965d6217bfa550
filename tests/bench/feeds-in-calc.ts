import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import writeWorkbook from 'write-excel-file/node';
import type { Cell, Computed, FeedWorkbook } from './feed-sheet.ts';

const office = ['soffice', 'libreoffice'].find((it) => spawnSync(it, ['--version']).status === 0);

/** How often the office program recalculates. */
const rounds = 40;

/**
 * The workbook recalculated by LibreOffice Calc: a macro in a profile of its own opens it, has every formula computed
 * again (`calculateAll` is what the program calls a hard recalculation) and takes the time of that alone, inside the
 * process; starting and loading do not count. It is processor time where the system tells it (Linux), on the average
 * of all rounds, and elsewhere the time of the fastest round. null: no such program is installed here.
 */
export async function computedInCalc(workbook: FeedWorkbook): Promise<(Computed & { ms: number }) | null> {
  if (office === undefined) return null;
  const folder = mkdtempSync(join(tmpdir(), 'foldbook-calc-'));
  try {
    const [sheets, answer] = [join(folder, 'feeds.xlsx'), join(folder, 'answer.txt')];
    await writeWorkbook(
      Object.entries(workbook).map(([sheet, rows]) => ({ sheet, data: rows.map((row) => row.map(cellOf)) })),
    ).toFile(sheets);
    const profile = join(folder, 'profile');
    const run = (...more: string[]) =>
      spawnSync(
        office,
        [`-env:UserInstallation=${pathToFileURL(profile).href}`, '--headless', '--norestore', ...more],
        {
          stdio: 'ignore',
          timeout: 120_000,
          killSignal: 'SIGKILL',
        },
      );
    // The first start makes the profile, and would write over a macro that was there before.
    run('--terminate_after_init');
    const library = join(profile, 'user', 'basic', 'Standard');
    writeFileSync(join(library, 'Recalculate.xba'), macro(pathToFileURL(sheets).href, answer));
    writeFileSync(join(library, 'script.xlb'), libraryWith('Recalculate'));
    run('macro:///Standard.Recalculate.Run');
    if (!existsSync(answer))
      throw new Error('The office program is here, but did not run the macro to its end.');
    return readAnswer(readFileSync(answer, 'utf8'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function cellOf(cell: Cell) {
  if (cell === '') return null;
  return typeof cell === 'string' && cell.startsWith('=')
    ? { type: 'Formula' as const, value: cell }
    : { value: cell };
}

const libraryWith = (module: string) => `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE library:library PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "library.dtd">
<library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false" library:passwordprotected="false">
 <library:element library:name="${module}"/>
</library:library>
`;

/**
 * On the first line the milliseconds of each recalculation; on the next two what Linux says of the process before and
 * after (see proc(5), "stat"), or nothing; then both sheets, row by row, cells parted by tabs.
 */
const macro = (sheets: string, answer: string) => `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE script:module PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "module.dtd">
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Recalculate" script:language="StarBasic">
Function StandOfProcess() As String
  Dim told As String
  told = ""
  If FileExists("/proc/self/stat") Then
    Open "/proc/self/stat" For Input As #2
    Line Input #2, told
    Close #2
  End If
  StandOfProcess = told
End Function
Sub Run
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  workbook = StarDesktop.loadComponentFromURL("${sheets}", "_blank", 0, hidden())
  taken = ""
  before = StandOfProcess()
  For round = 1 To ${rounds}
    started = GetSystemTicks()
    workbook.calculateAll()
    taken = taken &amp; (GetSystemTicks() - started) &amp; Chr(9)
  Next
  after = StandOfProcess()
  Open "${answer}" For Output As #1
  Print #1, taken
  Print #1, before
  Print #1, after
  For Each name In Array("Feeds", "Levels")
    sheet = workbook.Sheets.getByName(name)
    cursor = sheet.createCursor()
    cursor.gotoEndOfUsedArea(False)
    Print #1, name
    For Each row In sheet.getCellRangeByPosition(0, 0, cursor.RangeAddress.EndColumn, cursor.RangeAddress.EndRow).getDataArray()
      told = ""
      For Each cell In row
        If VarType(cell) = 5 Then told = told &amp; "=" &amp; Str(cell) &amp; Chr(9) Else told = told &amp; cell &amp; Chr(9)
      Next
      Print #1, told
    Next
  Next
  Close #1
  workbook.close(True)
  StarDesktop.terminate()
End Sub
</script:module>
`;

function readAnswer(text: string): Computed & { ms: number } {
  const lines = text.split(/\r?\n/);
  const [taken = '', before = '', after = ''] = lines;
  const cells = (line: string) => line.split('\t').slice(0, -1);
  const [feedsAt, levelsAt] = [lines.indexOf('Feeds'), lines.indexOf('Levels')];
  const values = (from: number, to?: number) =>
    lines
      .slice(from + 1, to)
      .filter((line) => line !== '')
      .map((row) => cells(row).map((cell) => (cell.startsWith('=') ? Number(cell.slice(1)) : cell)));
  return {
    ms:
      before === ''
        ? Math.min(...cells(taken).map(Number))
        : (processorMsOf(after) - processorMsOf(before)) / rounds,
    feeds: values(feedsAt, levelsAt),
    levels: values(levelsAt),
  };
}

/** Time in the program and in the system, the 14th and 15th figure of the line, in hundredths of a second. */
function processorMsOf(stand: string): number {
  // The second figure is the name of the program in brackets, which may hold spaces.
  const [user, system] = stand
    .slice(stand.lastIndexOf(')') + 2)
    .split(' ')
    .slice(11, 13);
  return (Number(user) + Number(system)) * 10;
}
