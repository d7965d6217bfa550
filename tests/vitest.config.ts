import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { canRunElectron } from './electron-project.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

// Electron's binary is no unit's business, and often not there: what imports `electron` gets the stand-in.
const standIn = fileURLToPath(new URL('./stand-in/electron.ts', import.meta.url));

/** A machine that is busy is slower, not wrong. */
const expectSettings = { poll: { timeout: 15_000 } };

/** The program in Electron itself; `npm test` says so where it cannot run. */
const electronProject = {
  test: {
    name: 'electron',
    root,
    include: ['tests/electron/**/*.test.ts'],
    fileParallelism: false,
    testTimeout: 120_000,
    expect: expectSettings,
  },
};

export default defineConfig({
  root,
  test: {
    projects: [
      {
        // Everything that needs no browser.
        resolve: { alias: { electron: standIn } },
        test: {
          name: 'unit',
          root,
          include: ['tests/{unit,property,contract,reference}/**/*.test.ts'],
          setupFiles: ['tests/property-seed.ts'],
          // The usual number leaves one core idle: on a machine of two, half of them.
          maxWorkers: '100%',
          testTimeout: 20_000,
          expect: expectSettings,
        },
      },
      {
        resolve: { alias: { electron: standIn } },
        // Real Chromium, one file at a time: two browsers at once would fight for a small machine. What fails on a
        // machine that was busy for a moment is tried once more, and told so; a fault fails twice.
        test: {
          name: 'end-to-end',
          root,
          include: ['tests/end-to-end/**/*.test.ts'],
          fileParallelism: false,
          retry: 1,
          testTimeout: 60_000,
          expect: expectSettings,
          hookTimeout: 60_000,
        },
      },
      ...(canRunElectron(root) ? [electronProject] : []),
    ],
  },
});
