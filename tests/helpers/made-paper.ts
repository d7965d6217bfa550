import type { z } from 'zod';
import type { Edition } from '../../core/sheets/edition.ts';
import { PaperRequest } from '../../core/sheets/paper-request.ts';
import type { Show } from '../../core/show/show.ts';
import { TypeCase } from '../../electron/paper/fonts/type-case.ts';
import { type MadePaper, makeFiles, type PaperInput } from '../../electron/paper/make-files.ts';

const typeCase = new TypeCase();

export function paperInput(
  show: Show,
  request: z.input<typeof PaperRequest>,
  lastEditions: ReadonlyMap<string, Edition> = new Map(),
): PaperInput {
  const now = new Date(2027, 5, 12, 9, 30);
  return { show, request: PaperRequest.parse(request), lastEditions, now, madeAt: '12 Jun 2027, 09:30' };
}

/** Makes files in this thread; tests of the worker use `makePaper`. */
export function madePaper(...input: Parameters<typeof paperInput>): Promise<MadePaper> {
  return makeFiles(paperInput(...input), typeCase);
}

export function onlyFile({ files }: MadePaper): Uint8Array {
  const [file] = files;
  if (!file || files.length !== 1) throw new Error(`one file was expected, not ${files.length}`);
  return file.bytes;
}
