import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeReader } from '../../src/main/reader.ts';
import { makeService, type Service } from '../../src/main/service.ts';
import { openStore, type Store } from '../../src/main/store/store.ts';
import { facetTerms } from '../../src/shared/workroom/facetTerms.ts';
import { facetRules, recipeFacets } from '../../src/shared/workroom/recipeFacets.ts';
import { demoPattern, starterRecipes } from '../helpers/starters.ts';
import { median, type Row } from './row.ts';

/** Asks a service on a library in a folder of its own, on the same kind of disk that a designer's library has. */
async function withLibrary(work: (service: Service, store: Store) => Promise<number>): Promise<number> {
  const folder = mkdtempSync(join(tmpdir(), 'piecewright-bench-'));
  const store = openStore({ folder, now: () => new Date() });
  const service = makeService({
    store,
    reader: makeReader([]),
    publisher: { make: () => Promise.reject(new Error('nothing is published here')), close: async () => {} },
    mattressTables: [],
    host: 'browser',
    version: '',
    report: (error) => console.error(error),
  });
  try {
    return await work(service, store);
  } finally {
    await service.close();
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

/** Their facets worked out; copies of one starter have the same. */
function workOutFacets(store: Store): void {
  const starters = starterRecipes();
  const book = new Map(starters.map((recipe) => [recipe.id, recipe]));
  const terms = starters.map((recipe) => {
    const facets = recipeFacets(recipe, book);
    return facets === null ? [] : facetTerms(facets);
  });
  const derive = ({ id }: { readonly id: string }) => terms[Number(id.split('-').at(-1)) % starters.length] ?? [];
  store.recipes.facets.workOut(facetRules(), derive, () => false);
}

/** Filters, alone and together; most leave thousands, the last a handful. */
const filtered: readonly { readonly words: string; readonly facets: readonly string[] }[] = [
  { words: '', facets: ['family:four-patch'] },
  { words: '', facets: ['skill:full-seams', 'size:8', 'unit:hst'] },
  { words: 'st', facets: ['size:9', 'skill:full-seams'] },
  { words: 'drunk', facets: ['skill:curves'] },
];

async function slowestFilter(service: Service): Promise<number> {
  const times: number[] = [];
  for (const search of filtered) times.push(await median(() => service.recipes({ ...search, atMost: 60 })));
  return Math.max(...times);
}

/** What a designer types, letter by letter; the slowest of them counts. */
const typed = ['', 's', 'sa', 'saw', 'sawt', 'sawtooth', 'star', 'star 12', 'geese', 'log cab', 'nine patch 9'];

async function slowestSearch(service: Service): Promise<number> {
  const times: number[] = [];
  for (const words of typed) times.push(await median(() => service.recipes({ words, atMost: 60 })));
  return Math.max(...times);
}

/** The whole way of an edit: its document checked, written, and on the disk. */
function timeToSave(service: Service): Promise<number> {
  const pattern = demoPattern();
  let revision: number | null = null;
  let round = 0;
  const save = async () => {
    ({ revision } = await service.savePattern({ pattern: { ...pattern, title: `Round ${round++}` }, revision }));
  };
  return median(save, { warm: 5, timed: 50 });
}

export const rows: readonly Row[] = [
  {
    what: 'library of 10,000 recipes: search as you type',
    budget: 16,
    measure: () =>
      withLibrary((service, store) => {
        fill(store);
        return slowestSearch(service);
      }),
  },
  {
    what: 'library of 10,000 recipes: filtered by how they are made',
    budget: 16,
    measure: () =>
      withLibrary((service, store) => {
        fill(store);
        workOutFacets(store);
        return slowestFilter(service);
      }),
  },
  { what: 'saved edit on disk (crash-safe)', budget: 10, measure: () => withLibrary(timeToSave) },
];
