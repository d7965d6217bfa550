import { readFile } from 'node:fs/promises';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import { ShowDocument } from '../../core/show/show.ts';
import { parseJson } from '../exchange/parse-json.ts';
import { sentenceOfIssue } from '../exchange/sentence-of-issue.ts';
import { type MendedShow, mendShow } from './mended-show.ts';

/** The show in a file that was exported as JSON; a refusal says which row is wrong, and how. */
export async function showOfFile(path: string): Promise<Outcome<ShowDocument>> {
  const json = await jsonOfFile(path);
  if (!json.ok) return json;
  const document = ShowDocument.safeParse(json.value);
  if (document.success) return { ok: true, value: document.data };
  const [issue] = document.error.issues;
  return noShow(path, issue ? sentenceOfIssue(issue, json.value) : 'it is damaged');
}

/** What can be used of a show in a file that was edited by hand, and what is wrong with the rest. */
export async function mendedShowOfFile(path: string): Promise<Outcome<MendedShow>> {
  const json = await jsonOfFile(path);
  if (!json.ok) return json;
  const mended = mendShow(json.value);
  return mended ? { ok: true, value: mended } : noShow(path, whyNoDocument(json.value));
}

function whyNoDocument(json: unknown): string {
  const isRow = typeof json === 'object' && json !== null && !Array.isArray(json);
  if (!isRow || !('format' in json) || json.format !== 'foldbook-show')
    return 'it does not say "format": "foldbook-show"';
  const version = 'version' in json ? JSON.stringify(json.version) : 'none';
  return `its version is ${version}, and this program reads version 1`;
}

async function jsonOfFile(path: string): Promise<Outcome<unknown>> {
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch {
    return refuse('unreadable file', `“${path}” cannot be read.`, 'Check the name and that you may read it.');
  }
  try {
    return { ok: true, value: parseJson(text) };
  } catch (error) {
    const where = error instanceof Error ? error.message : 'it is damaged';
    return refuse(
      'not a show',
      `“${path}” is not JSON: ${where}.`,
      'Name a show that Foldbook exported as JSON.',
    );
  }
}

function noShow(path: string, why: string) {
  return refuse(
    'not a show',
    `“${path}” is no show that can be read: ${why}.`,
    'Correct it, or name a show that Foldbook exported as JSON. The shape is in assets/schema/show.schema.json.',
  );
}
