import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { actSchemaText, showSchemaText } from './show-schema.ts';

/** `npm run make-schema`: writes the JSON Schemas of exported shows and acts, from the rows' own schemas. */
const folder = join(import.meta.dirname, '..', '..', 'assets', 'schema');
await mkdir(folder, { recursive: true });
await writeFile(join(folder, 'show.schema.json'), showSchemaText());
await writeFile(join(folder, 'act.schema.json'), actSchemaText());
