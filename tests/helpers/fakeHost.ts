import { Refused } from '../../src/renderer/state/host.ts';
import type {
  Contract,
  Imported,
  Job,
  PatternCard,
  PhotographPicture,
  PublishedFile,
  RecipeCard,
  Refusal,
} from '../../src/shared/contract.ts';
import type { Mattress } from '../../src/shared/pattern/mattresses.ts';
import { documentText, recipesText } from '../../src/shared/pattern/save.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { Recipe } from '../../src/shared/recipe/schema.ts';

export interface FakeHost extends Contract {
  /** Every document that was put on "disk", oldest first. */
  readonly saved: readonly Pattern[];
  /** The next saves are refused with this, until it is taken away. */
  refuseSaves(refusal: Refusal | null): void;
  /** Saves wait until the promise is done. */
  holdSaves(until: Promise<unknown>): void;
}

export interface FakeShelf {
  readonly patterns: readonly Pattern[];
  readonly recipes?: readonly Recipe[];
  readonly first?: string;
}

const NOT_HERE: Refusal = { kind: 'not-found', words: 'Nothing by that name is kept here.' };

/** A host that keeps everything in memory: for tests of the window alone. */
export function fakeHost({ patterns, recipes = [], first }: FakeShelf): FakeHost {
  const kept = new Map(patterns.map((pattern) => [pattern.id, { pattern, revision: 1 }]));
  const shelf = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  const matching = (words: string) =>
    [...shelf.values()].filter(({ name, tags }) =>
      `${name} ${tags.join(' ')}`.toLowerCase().includes(words.toLowerCase()),
    );
  const revisions = new Map(recipes.map((recipe) => [recipe.id, [recipe]]));
  const beds = new Map<string, Mattress>();
  const saved: Pattern[] = [];
  let refusal: Refusal | null = null;
  let hold: Promise<unknown> = Promise.resolve();

  const cardOf = ({ pattern, revision }: { pattern: Pattern; revision: number }): PatternCard => ({
    id: pattern.id,
    title: pattern.title,
    designer: pattern.words.designer,
    sizes: pattern.sizes.length,
    changed: '2026-01-01T00:00:00Z',
    revision,
  });
  const recipeCard = (recipe: Recipe): RecipeCard => {
    const usedIn = [...kept.values()].filter(({ pattern }) => pattern.recipes.some(({ id }) => id === recipe.id));
    return {
      id: recipe.id,
      name: recipe.name,
      tags: recipe.tags,
      starter: true,
      usedIn: usedIn.map(({ pattern }) => pattern.title),
      revision: revisions.get(recipe.id)?.length ?? 1,
      recipe,
    };
  };
  const found = <T>(thing: T | undefined): T => {
    if (thing === undefined) throw new Refused(NOT_HERE);
    return thing;
  };

  const imports: Imported[] = [];
  const importText = (text: string): Imported => {
    const pattern = JSON.parse(text) as Pattern;
    kept.set(pattern.id, { pattern, revision: 1 });
    return { kind: 'pattern', id: pattern.id };
  };

  return {
    saved,
    refuseSaves: (next) => {
      refusal = next;
    },
    holdSaves: (until) => {
      hold = until;
    },
    about: async () => ({
      host: 'browser',
      version: '0.0.0',
      folder: '/nowhere',
      first: first ?? patterns[0]?.id ?? '',
    }),
    patterns: async () => [...kept.values()].map(cardOf),
    openPattern: async (id) => found(kept.get(id)).pattern,
    lookAtPattern: async (id) => found(kept.get(id)).pattern,
    savePattern: async ({ pattern, revision }) => {
      await hold;
      if (refusal !== null) throw new Refused(refusal);
      const there = kept.get(pattern.id)?.revision ?? null;
      if (there !== revision)
        throw new Refused({ kind: 'changed-elsewhere', words: 'It was changed in another window.' });
      const next = (there ?? 0) + 1;
      kept.set(pattern.id, { pattern, revision: next });
      saved.push(pattern);
      return { revision: next };
    },
    removePattern: async (id) => {
      kept.delete(id);
    },
    recipes: async ({ words, from = 0, atMost = 10_000 }) =>
      matching(words)
        .slice(from, from + atMost)
        .map(recipeCard),
    countRecipes: async ({ words }) => matching(words).length,
    openRecipe: async (id) => found(shelf.get(id)),
    keptRecipes: async (ids) =>
      ids.flatMap((id) => {
        const recipe = shelf.get(id);
        return recipe === undefined ? [] : [{ recipe, revision: revisions.get(id)?.length ?? 1 }];
      }),
    recipeRevisions: async (id) =>
      (revisions.get(id) ?? [])
        .map((recipe, i) => ({ recipe, revision: i + 1, changed: '2026-01-01T00:00:00Z' }))
        .reverse(),
    saveRecipe: async (recipe) => {
      shelf.set(recipe.id, recipe);
      const all = [...(revisions.get(recipe.id) ?? []), recipe];
      revisions.set(recipe.id, all);
      return { revision: all.length };
    },
    removeRecipe: async (id) => {
      shelf.delete(id);
    },
    importFile: async ({ text }) => importText(text),
    bringIn: async ({ text }) => ({ job: String(imports.push(importText(text)) - 1) }),
    broughtIn: async (id) => found(imports[Number(id)]),
    exportRecipes: async (ids) => ({
      name: 'library.recipes.json',
      text: recipesText(ids.map((id) => found(shelf.get(id)))),
    }),
    mattresses: async () => ({ tables: [], own: [...beds.values()] }),
    saveMattress: async (mattress) => {
      beds.set(mattress.id, mattress);
    },
    removeMattress: async (id) => {
      beds.delete(id);
    },
    exportPattern: async (pattern) => ({ name: `${pattern.id}.pattern.json`, text: documentText(pattern) }),
    bringPhotograph: async ({ name }) => {
      throw new Refused({ kind: 'bad-input', words: `“${name}” is no picture that can be read.` });
    },
    photograph: async () => found<PhotographPicture>(undefined),
    photographColour: async () => found<string>(undefined),
    prove: async () => ({ job: 'proof' }),
    proof: async () => ({ strips: [], length: 0, bound: 0, proven: true }),
    publish: async () => {
      throw new Refused({ kind: 'broken', words: 'There is no press here.' });
    },
    job: async (id): Promise<Job> =>
      imports[Number(id)] === undefined ? found<Job>(undefined) : { state: 'done', progress: 1, doing: 'Done' },
    cancel: async () => undefined,
    result: async () => found<PublishedFile>(undefined),
  };
}
