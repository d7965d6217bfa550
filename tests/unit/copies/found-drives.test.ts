import { expect, test } from 'vitest';
import { isOwnCopy, nameOfCopy, thisMachine } from '../../../electron/copies/copy-names.ts';
import { pathsInMounts } from '../../../electron/copies/found-drives.ts';

/** Lines as Linux writes them (proc(5), fstab(5)). */
const mounts = [
  'proc /proc proc rw,nosuid 0 0',
  '/dev/nvme0n1p2 / ext4 rw,relatime 0 0',
  'tmpfs /run/user/1000 tmpfs rw 0 0',
  '/dev/sdb1 /media/ada/SHOW\\040STICK vfat rw,nosuid 0 0',
  '/dev/sdc1 /run/media/ada/LOCKED vfat ro,nosuid 0 0',
  'tower:/shows /srv/shows nfs4 rw 0 0',
  '//tower/audio /home/ada/audio cifs rw 0 0',
  'overlay /mnt/layer overlay rw 0 0',
  '/dev/sr0 /media/ada/DISC iso9660 ro 0 0',
  '',
].join('\n');

test.each<[what: string, dataFolder: string, paths: string[]]>([
  [
    'sticks and shares that can be written to, not what belongs to the machine',
    '/home/ada/.local/share/foldbook',
    ['/media/ada/SHOW STICK', '/srv/shows', '/home/ada/audio'],
  ],
  [
    'all but the one that holds the show itself',
    '/media/ada/SHOW STICK/festival',
    ['/srv/shows', '/home/ada/audio'],
  ],
])('a second folder may lie on %s', (_what, dataFolder, paths) => {
  expect(pathsInMounts(mounts, dataFolder)).toEqual(paths);
});

test.each([
  ['Ada’s Tower.local', 'ada-s-tower-local'],
  ['…', 'machine'],
  ['x'.repeat(99), 'x'.repeat(40)],
])('the machine %s stands in the name of its copies as %s', (host, name) => {
  expect(thisMachine(host)).toBe(name);
  expect(nameOfCopy(new Date('2026-05-01T09:30:00Z'), 'by hand', name)).toBe(
    `show.2026-05-01T09-30-00-000Z.by-hand.${name}.foldbook`,
  );
});

test('a copy of another machine is not taken for one of this show', () => {
  expect([isOwnCopy({ machine: 'van' }, 'van'), isOwnCopy({ machine: 'tower' }, 'van')]).toEqual([
    true,
    false,
  ]);
  expect(isOwnCopy({ machine: null }, 'van'), 'copies of before machines were named').toBe(true);
});
