import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { showSchemaText } from './show-schema.ts';

/** `npm run make-schema`: writes the JSON Schema of an exported show, from the rows' own schemas. */
const path = join(import.meta.dirname, '..', '..', 'assets', 'schema', 'show.schema.json');
await mkdir(dirname(path), { recursive: true });
await writeFile(path, showSchemaText());
