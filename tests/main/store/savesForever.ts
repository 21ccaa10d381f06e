import { openStore } from '../../../src/main/store/store.ts';
import { samplePattern, sampleRecipe } from '../helpers/samples.ts';

/** A program that saves a pattern and a recipe over and over, and tells of each save once it has been answered. */
const folder = process.argv[2];
if (folder === undefined) throw new Error('name the folder');
const store = openStore({ folder, now: () => new Date() });
let revision: number | null = null;
for (;;) {
  const next: number = (revision ?? 0) + 1;
  const introduction = `Save ${next}. `.repeat(400);
  const pattern = samplePattern();
  const saved = store.patterns.save({ ...pattern, words: { ...pattern.words, introduction } }, revision);
  if (!('revision' in saved)) throw new Error('nobody else saves here');
  revision = saved.revision;
  store.recipes.save(sampleRecipe({ name: `Mooring ${next}`, tags: [`save-${next}`] }), false);
  process.stdout.write(`${revision}\n`);
}
