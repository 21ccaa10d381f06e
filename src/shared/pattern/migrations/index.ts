import { PATTERN_FORMAT } from '../schema.ts';
import type { Loose, Migration } from './migration.ts';

/** The steps of the pattern format, in order. Format 1 is the first, so there are none yet. */
const patternSteps: readonly Migration[] = [];

/** The steps of the recipe format, in order. Format 1 is the first, so there are none yet. */
const recipeSteps: readonly Migration[] = [];

export const migrations = { pattern: patternSteps, recipe: recipeSteps } as const;

/**
 * An old document brought up to the newest format, one step at a time.
 * @param steps the steps of its kind of document
 * @param newest the format number of this program
 * @throws RangeError when a step is missing: a bug, not a bad file
 */
export function migrate(document: Loose, steps: readonly Migration[] = patternSteps, newest = PATTERN_FORMAT): Loose {
  let now = document;
  for (let version = Number(document.version); version < newest; version += 1) {
    const step = steps.find(({ from }) => from === version);
    if (step === undefined) throw new RangeError(`No step from format ${version} to ${version + 1}`);
    now = { ...step.up(now), version: version + 1 };
  }
  return now;
}
