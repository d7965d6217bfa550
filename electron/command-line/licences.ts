import { z } from 'zod';

const Lock = z.object({
  packages: z.record(
    z.string(),
    z.object({
      version: z.string().optional(),
      license: z.string().optional(),
      integrity: z.string().optional(),
      dev: z.boolean().optional(),
    }),
  ),
});

/** Licences under which a package may be given on with the program. */
const acceptable: readonly string[] = [
  'MIT',
  'MIT-0',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'Python-2.0',
  'OFL-1.1',
  '(MIT AND Zlib)',
  // Weak: what was changed of the package itself has to stay open. Nothing of it is changed here.
  'MPL-2.0',
];

/** Packages whose entry names no licence, with what their own licence file says (looked at by hand). */
const lookedAt: Readonly<Record<string, string>> = {
  'dejavu-fonts-ttf': 'Bitstream Vera',
  'png-js': 'MIT',
};

export type Licence = { name: string; version: string; licence: string };

/** The packages that are given on with the program, by name, with the licence of each. */
export function licencesOf(lockText: string): Licence[] {
  const { packages } = Lock.parse(JSON.parse(lockText));
  const found = Object.entries(packages)
    .filter(([path, { dev }]) => path !== '' && !dev)
    .map(([path, { version = '', license }]) => {
      const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
      return { name, version, licence: lookedAt[name] ?? license ?? 'not said' };
    });
  const unique = new Map(found.map((it) => [`${it.name} ${it.version}`, it]));
  return [...unique.values()].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

/** Those that may not be given on. */
export function refusedLicences(licences: readonly Licence[]): Licence[] {
  return licences.filter(({ name, licence }) => !acceptable.includes(licence) && !(name in lookedAt));
}

/** The list as it lies in `assets/licences.md`. */
export function licenceListText(licences: readonly Licence[]): string {
  const lines = licences.map(({ name, version, licence }) => `| ${name} | ${version} | ${licence} |`);
  return [
    '# Licences of the packages',
    '',
    'The packages that come with Foldbook, and some that only some systems need. Made by `npm run make-licences`.',
    '',
    '| package | version | licence |',
    '|---|---|---|',
    ...lines,
    '',
  ].join('\n');
}
