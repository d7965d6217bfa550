import { largestRiderBytes } from '../../core/contract/contract.ts';
import type { Problem } from '../../core/contract/problem.ts';
import type { Grid } from '../../core/rider/grid.ts';
import type { Connection } from '../connection.ts';
import { words } from '../wording/words.ts';

export type Brought = { ok: true; grid: Grid } | { ok: false; problem: Problem };

/** Reads a file into a grid, or says why not. Changes nothing. */
export async function gridOfFile(connection: Connection, file: File): Promise<Brought> {
  if (file.size > largestRiderBytes) {
    const most = `${Math.round(largestRiderBytes / 1024 / 1024)} MB`;
    const what = words.advance.tooLarge(file.name, most);
    return { ok: false, problem: { code: 'file too large', what, todo: words.advance.tooLargeTodo } };
  }
  return gridOfBytes(connection, file.name, new Uint8Array(await file.arrayBuffer()));
}

/** Reads a pasted text the same way as a file: cells where it has tabs, lines where it has not. */
export function gridOfText(connection: Connection, text: string): Promise<Brought> {
  const ending = text.includes('\t') ? 'tsv' : 'txt';
  return gridOfBytes(connection, `${words.advance.pastedName}.${ending}`, new TextEncoder().encode(text));
}

async function gridOfBytes(connection: Connection, fileName: string, bytes: Uint8Array): Promise<Brought> {
  const answer = await connection.call('rider.grid', {
    fileName: fileName.slice(-400),
    base64: base64Of(bytes),
  });
  return answer.ok ? { ok: true, grid: answer.value.grid } : answer;
}

const chunk = 0x8000;

function base64Of(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += chunk)
    text += String.fromCharCode(...bytes.subarray(at, at + chunk));
  return btoa(text);
}
