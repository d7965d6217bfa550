import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { licenceListText, licencesOf, refusedLicences } from '../../../electron/command-line/licences.ts';

const root = join(import.meta.dirname, '..', '..', '..');
const lock = readFileSync(join(root, 'package-lock.json'), 'utf8');

test('every package that is given on has a licence that allows it', () => {
  const licences = licencesOf(lock);
  expect(licences.length).toBeGreaterThan(50);
  expect(refusedLicences(licences)).toEqual([]);
});

test('a package under another licence, or under none, would be refused', () => {
  const packages = {
    'node_modules/one': { version: '1.0.0', license: 'GPL-3.0' },
    'node_modules/two': { version: '1.0.0' },
    'node_modules/three': { version: '1.0.0', license: 'MIT' },
    'node_modules/four': { version: '1.0.0', license: 'GPL-3.0', dev: true },
  };
  const refused = refusedLicences(licencesOf(JSON.stringify({ packages })));
  expect(refused.map(({ name }) => name)).toEqual(['one', 'two']);
});

test('the list of licences is the one of the packages: if not, run npm run make-licences', () => {
  expect(readFileSync(join(root, 'assets', 'licences.md'), 'utf8')).toBe(licenceListText(licencesOf(lock)));
});

test('every package is pinned to one version, and to what its archive was', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies }))
    expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
  const { packages } = JSON.parse(lock) as { packages: Record<string, { integrity?: string }> };
  for (const [path, { integrity }] of Object.entries(packages))
    if (path !== '') expect(integrity, path).toMatch(/^sha(512|1)-/);
});
