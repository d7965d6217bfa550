import { parentPort, workerData } from 'node:worker_threads';
import Database from 'better-sqlite3';

// A thorough check reads the whole file: beside the program, so that no window waits for it.
const copy = new Database(String(workerData));
// A copy is one file that can be read where nothing may be written, as on a stick that is write-protected.
copy.pragma('journal_mode = DELETE');
const found = copy.pragma('integrity_check(1)', { simple: true });
copy.close();
parentPort?.postMessage(String(found));
