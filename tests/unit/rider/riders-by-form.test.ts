import { describe, expect, test } from 'vitest';
import {
  addScores,
  noScores,
  riderGrid,
  riderNames,
  type Scores,
  scoreGrid,
} from '../../helpers/rider-corpus.ts';
import { throughForm } from '../../helpers/rider-forms.ts';

/** Floors of the promise, held for every form of file: the same riders, made into such files and read back. */
const floors: Record<keyof Scores, number> = {
  lines: 0.98,
  kinds: 0.95,
  pairs: 0.95,
  wishes: 0.9,
  devices: 0.9,
};

const isTable = (name: string) => riderGrid(name).form !== 'text';
const forms = [
  { form: 'csv', of: (name: string) => riderGrid(name).form === 'csv' },
  { form: 'tsv', of: (name: string) => riderGrid(name).form === 'tsv' },
  { form: 'text', of: (name: string) => !isTable(name) },
  { form: 'xlsx', of: isTable },
  { form: 'pdf', of: isTable },
  { form: 'docx', of: (name: string) => !isTable(name) },
] as const;

describe('riders in every form of file', () => {
  test.each(forms)(
    'riders as $form are read at least as well as promised',
    async ({ form, of }) => {
      const sum = noScores();
      const wrong: string[] = [];
      const names = riderNames().filter(of);
      for (const name of names) {
        const grid = riderGrid(name);
        const made =
          form === 'xlsx' || form === 'pdf' || form === 'docx' ? await throughForm(form, grid) : grid;
        addScores(sum, scoreGrid(name, made, wrong));
      }
      const share = ({ right, of: all }: Scores['lines']) => (all === 0 ? 1 : right / all);
      const told = Object.entries(sum).map(([what, score]) => `${what} ${score.right}/${score.of}`);
      console.log(`${form}, ${names.length} riders: ${told.join(', ')}`);
      const below = (Object.keys(floors) as (keyof Scores)[]).filter(
        (what) => share(sum[what]) < floors[what],
      );
      expect(below, wrong.join('\n')).toEqual([]);
    },
    120_000,
  );
});
