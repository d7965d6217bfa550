import { showTables } from './001-show-tables.ts';
import { history } from './002-history.ts';
import { printedSheets } from './003-printed-sheets.ts';
import { ticks } from './004-ticks.ts';
import { statesAndWritings } from './005-states-and-writings.ts';
import { ownWords } from './006-own-words.ts';
import { asRanAndArchive } from './007-as-ran-and-archive.ts';
import { placeOfTheCue } from './008-place-of-the-cue.ts';
import { rowSums } from './009-row-sums.ts';
import { meaningsAndStandIns } from './010-meanings-and-stand-ins.ts';
import { insideOfNames } from './011-inside-of-names.ts';

/**
 * What was done to the file format, in order; a file's version is how many of these it has had. Only ever add at
 * the end, and only ever add tables and columns with a default, or undo of what was done before is lost: a step that has been released is never edited, for files that had it will not have it again.
 */
export const migrations: readonly { name: string; statements: string }[] = [
  { name: 'show tables', statements: showTables },
  { name: 'history', statements: history },
  { name: 'printed sheets', statements: printedSheets },
  { name: 'ticks', statements: ticks },
  { name: 'states and writings', statements: statesAndWritings },
  { name: 'own words and replaced riders', statements: ownWords },
  { name: 'as ran and archive', statements: asRanAndArchive },
  { name: 'place of the cue', statements: placeOfTheCue },
  { name: 'row sums', statements: rowSums },
  { name: 'meanings of own words and stand-ins', statements: meaningsAndStandIns },
  { name: 'inside of names in the archive', statements: insideOfNames },
];
