import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { licenceListText, licencesOf } from './licences.ts';

/** `npm run make-licences`: writes the list of the packages' licences from the lock file. */
const root = join(import.meta.dirname, '..', '..');
const licences = licencesOf(await readFile(join(root, 'package-lock.json'), 'utf8'));
await writeFile(join(root, 'assets', 'licences.md'), licenceListText(licences));
