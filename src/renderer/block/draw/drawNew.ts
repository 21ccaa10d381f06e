import { addBlock } from '../../../shared/pattern/edits/index.ts';
import { freeId } from '../../../shared/pattern/edits/list.ts';
import { freshPattern } from '../../../shared/pattern/fresh.ts';
import type { Recipe } from '../../../shared/recipe/schema.ts';
import { refusalOf } from '../../state/host.ts';
import type { Studio } from '../../state/studio.ts';
import { type FreshDrawing, freeRecipeId, freshDrawing } from './freshDrawing.ts';

/** A block that is to be drawn, and who designs the pattern it begins when none is open. */
export interface NewBlock extends FreshDrawing {
  readonly designer: string;
}

/** Makes the recipe, keeps it in the library, and opens it in the pattern that is open, or in a new one. */
export async function drawNew(studio: Studio, asked: NewBlock): Promise<void> {
  try {
    const open = studio.store.getState().history?.now;
    const id = await freeRecipeId(studio.host, asked.name, open?.recipes.map((recipe) => recipe.id) ?? []);
    const recipe = freshDrawing(id, asked);
    const { revision } = await studio.host.saveRecipe(recipe);
    const revisions = { [id]: revision };
    if (open === undefined || open.blocks.length >= 26) await inNewPattern(studio, recipe, revisions, asked.designer);
    else studio.act(addBlock, { recipe, revisions });
    const block = studio.store.getState().history?.now.blocks.find((one) => one.recipe === id);
    if (block === undefined) return;
    studio.select({ kind: 'block', block: block.id });
    studio.show('block');
  } catch (thrown) {
    studio.say(refusalOf(thrown).words, { tone: 'stops' });
  }
}

async function inNewPattern(
  studio: Studio,
  recipe: Recipe,
  revisions: Readonly<Record<string, number>>,
  designer: string,
): Promise<void> {
  const taken = (await studio.host.patterns()).map(({ id }) => id);
  const title = `${recipe.name} Quilt`;
  const by = designer === '' ? (studio.store.getState().history?.now.words.designer ?? 'My studio') : designer;
  const date = new Date().toLocaleDateString('sv-SE');
  await studio.openFresh(freshPattern(recipe, [], { id: freeId(title, taken), title, designer: by, date, revisions }));
}
