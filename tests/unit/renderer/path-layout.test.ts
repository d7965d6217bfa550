import { describe, expect, test } from 'vitest';
import { type PlacedPaths, placedPaths } from '../../../renderer/mixes/path/path-layout.ts';
import { actOnScreen } from '../../../renderer/state/derive-cache.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

const open = actOnScreen(smallFestival(), 'tarn');
if (!open) throw new Error('the act is in the fixture');

const named = (paths: PlacedPaths, column: string) =>
  paths.nodes.filter((node) => node.column === column).map((node) => node.name);

describe('the path of a source', () => {
  const paths = placedPaths(open, 'source', 'tarn-s0');

  test('goes from who plays to everybody who listens', () => {
    expect(named(paths, 'player')).toEqual(['Mara']);
    expect(named(paths, 'socket')).toEqual(['A1']);
    expect(named(paths, 'listener').sort()).toEqual(['Joris', 'Mara', 'Noor']);
  });

  test('leaves out the cue, which hears every mix', () => {
    expect(paths.columns).not.toContain('cue');
  });

  test('tells its copies by their purpose', () => {
    const copies = paths.nodes.filter((node) => node.column === 'copy');
    expect(copies.map((node) => node.purpose)).toEqual(['foh', 'monitors']);
  });
});

describe('the path of a mix', () => {
  const paths = placedPaths(open, 'mix', 'tarn-m0');

  test('holds its sources and where the engineer hears it', () => {
    expect(named(paths, 'source')).toEqual(['Guitar', 'Keys left', 'Keys right', 'Lead vocal']);
    expect(named(paths, 'cue')).toEqual(['cue wedge']);
  });

  test('never puts two things of one column on the same place', () => {
    for (const column of paths.columns) {
      const places = paths.nodes.filter((node) => node.column === column).map((node) => node.y);
      const sorted = places.toSorted((a, b) => a - b);
      for (const [at, place] of sorted.entries())
        if (at > 0) expect(place - (sorted[at - 1] ?? 0)).toBeGreaterThanOrEqual(1);
    }
  });
});

test('what is not in the act has no path', () => {
  expect(placedPaths(open, 'source', 'gone')).toMatchObject({ nodes: [], links: [] });
});
