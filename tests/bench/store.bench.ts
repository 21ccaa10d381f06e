import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore, type Store } from '../../src/main/store/store.ts';
import { demoPattern, starterRecipes } from '../helpers/starters.ts';
import { median, type Row } from './row.ts';

/** Does something with a store in a folder of its own, on the same kind of disk that a designer's library has. */
async function withStore(work: (store: Store) => number | Promise<number>): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-bench-'));
  const store = openStore({ folder, now: () => new Date() });
  try {
    return await work(store);
  } finally {
    store.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Ten thousand recipes: the starters over and over, each copy under a name of its own. */
function fill(store: Store): void {
  const starters = starterRecipes();
  for (let i = 0; i < 10_000; i++) {
    const recipe = starters[i % starters.length];
    if (recipe) store.recipes.save({ ...recipe, id: `${recipe.id}-${i}`, name: `${recipe.name} ${i}` }, false);
  }
}

/** What a designer types, letter by letter; the slowest of them counts. */
const typed = ['s', 'sa', 'saw', 'sawt', 'sawtooth', 'star', 'star 12', 'geese', 'log cab', 'nine patch 9'];

export const rows: readonly Row[] = [
  {
    what: 'library of 10,000 recipes: search as you type',
    budget: 16,
    measure: () =>
      withStore(async (store) => {
        fill(store);
        let slowest = 0;
        for (const words of typed) {
          const time = await median(() => store.recipes.find({ words, atMost: 60 }));
          slowest = Math.max(slowest, time);
        }
        return slowest;
      }),
  },
  {
    what: 'saved edit on disk (crash-safe)',
    budget: 10,
    measure: () =>
      withStore((store) => {
        const pattern = demoPattern();
        let revision: number | null = null;
        let round = 0;
        return median(
          () => {
            const saved = store.patterns.save({ ...pattern, title: `Round ${round++}` }, revision);
            if ('refused' in saved) throw new Error(`The edit was not kept: ${saved.refused}`);
            revision = saved.revision;
          },
          { warm: 5, timed: 50 },
        );
      }),
  },
];
