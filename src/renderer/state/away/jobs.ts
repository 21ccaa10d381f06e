import { stress } from '../../../shared/cloth/bundle/stress.ts';
import type { Step } from '../../../shared/measure/steps.ts';
import type { TakenRecipe } from '../../../shared/pattern/edits/takeRecipe.ts';
import type { Pattern } from '../../../shared/pattern/schema.ts';
import { cliffsOf, recastsOf } from '../../../shared/workroom/asides.ts';
import { findBundleSizes } from '../../../shared/workroom/findBundleSizes.ts';
import { findSizesInSteps } from '../../../shared/workroom/findSizes.ts';
import { recipeFacets } from '../../../shared/workroom/recipeFacets.ts';
import { type RecipeUpdate, recipeUpdate } from '../../../shared/workroom/recipeUpdate.ts';
import { rulerPreview } from '../../../shared/workroom/rulerChange.ts';
import { workOut, workOutInSteps } from '../../../shared/workroom/workOut.ts';
import { writeSections } from './foldedBook.ts';
import { drawPattern, drawRecipe } from './pictures.ts';

/**
 * What can be asked for away from the window's thread, by name: functions of the core whose arguments and answers are plain
 * data. One that takes long gives its steps, so that it can be told and stopped between them.
 */
export const JOBS = {
  workOut: workOutInSteps,
  findSizes: findSizesInSteps,
  findBundleSizes,
  cliffs: cliffsOf,
  stress,
  recasts: recastsOf,
  recipeFacets,
  writeSections,
  rulerPreview,
  drawPattern,
  drawRecipe,
  recipeUpdate: (pattern: Pattern, taken: TakenRecipe): RecipeUpdate => recipeUpdate(workOut(pattern), taken),
};

export type Jobs = typeof JOBS;
export type JobName = keyof Jobs;
export type JobArgs<Name extends JobName> = Parameters<Jobs[Name]>;
type Given<Name extends JobName> = ReturnType<Jobs[Name]>;
export type JobAnswer<Name extends JobName> = Given<Name> extends Generator<Step, infer Answer> ? Answer : Given<Name>;

/** The open pattern has a thread to itself: it never waits behind what a view or a dialog asks. */
export type Lane = 'pattern' | 'asides';

export function laneOf(name: JobName): Lane {
  return name === 'workOut' ? 'pattern' : 'asides';
}
