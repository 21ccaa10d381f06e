import { expect, test } from 'vitest';
import { type Outcome, sayWhatCame } from '../../../src/renderer/library/bringingWords.ts';
import { refusalOf } from '../../../src/renderer/state/host.ts';
import type { Imported } from '../../../src/shared/contract.ts';

/** What is said of these outcomes, each note with its further lines. */
function said(outcomes: readonly Outcome[], all = outcomes.length): readonly string[] {
  const notes: string[] = [];
  sayWhatCame(
    {
      say: (words, { more = [] } = {}) => void notes.push([words, ...more].join(' / ')),
      sayWhy: (thrown) => void notes.push(refusalOf(thrown).words),
    },
    outcomes,
    all,
  );
  return notes;
}

const recipe = (file: string, came: Imported = { kind: 'recipe', id: file }): Outcome => ({ file, came });
const pattern = (file: string): Outcome => ({ file, came: { kind: 'pattern', id: file } });
const refused = (file: string): Outcome => ({ file, refusal: { kind: 'bad-input', words: `${file}: not JSON.` } });
const stopped = (file: string): Outcome => ({ file, refusal: { kind: 'stopped', words: 'Stopped.' } });

test('a few files are told of one by one', () => {
  const many: Imported = { kind: 'recipes', ids: ['a', 'b'], already: 1 };
  expect(said([recipe('nets.recipes.json', many), pattern('pier.pattern.json'), refused('x.json')])).toEqual([
    'nets.recipes.json is in the library: 2 new recipes, 1 was here already.',
    'pier.pattern.json is in the library.',
    'x.json: not JSON.',
  ]);
});

test('of many files there is a sum, and every one that could not be taken is named', () => {
  const many: Imported = { kind: 'recipes', ids: ['a', 'b'], already: 3 };
  expect(said([recipe('a', many), recipe('b'), pattern('c'), refused('d.json'), refused('e.json')])).toEqual([
    'In the library from 5 files: 3 new recipes, 3 were here already, and 1 pattern.',
    '2 files could not be taken. / d.json: not JSON. / e.json: not JSON.',
  ]);
});

test('what is kept and what is not is said when it is stopped', () => {
  expect(said([stopped('nets.recipes.json')])).toEqual(['Stopped. Nothing of nets.recipes.json was kept.']);
  expect(said([recipe('a.recipe.json'), stopped('b.recipes.json')], 3)).toEqual([
    'a.recipe.json is in the library.',
    'Stopped at b.recipes.json. What came of 1 file before it stays; of it and the files after it nothing was kept.',
  ]);
});
