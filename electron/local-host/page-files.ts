import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';

export type PageFile = { type: string; bytes: Buffer };

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.json': 'application/json',
  '.txt': 'text/plain; charset=utf-8',
};

/**
 * Every file of the built page, in memory, by its path as a page asks for it ("/", "/assets/main.js"). A request is
 * looked up here by its exact name and never becomes a path on the disk: there is no way out of the folder.
 */
export function readPageFiles(folder: string): ReadonlyMap<string, PageFile> {
  const files = new Map<string, PageFile>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const type = types[extname(entry.name)];
    if (!entry.isFile() || !type) continue;
    const path = join(entry.parentPath, entry.name);
    const name = `/${relative(folder, path).split(sep).join('/')}`;
    files.set(name === '/index.html' ? '/' : name, { type, bytes: readFileSync(path) });
  }
  return files;
}
