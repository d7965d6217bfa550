// Plain JavaScript on purpose: an old Node can read this file, and so say what is wrong instead of failing on the
// first line of TypeScript (or crashing in the SQLite module, which Node 20 cannot load).
import module from 'node:module';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

// The first Node that runs TypeScript without being asked to.
const needed = [22, 18];

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < needed[0] || (major === needed[0] && minor < needed[1])) {
  console.error(
    `This is Node ${process.versions.node}; Foldbook needs Node ${needed.join('.')} or later. ` +
      'Run "npm ci" and then "npm start": on Linux and Windows that brings a fitting Node along. ' +
      'Elsewhere install a newer Node first.',
  );
  process.exit(1);
}

// TypeScript that was read once is not read again: it halves the start. Where nothing can be written, it is no trouble.
module.enableCompileCache(join(import.meta.dirname, '..', 'node_modules', '.cache', 'foldbook'));

const [node, , file, ...rest] = process.argv;
if (file === undefined) throw new Error('Usage: node electron/run.js FILE [ARGUMENTS]');
process.argv = [node, resolve(file), ...rest];
await import(pathToFileURL(resolve(file)).href);
