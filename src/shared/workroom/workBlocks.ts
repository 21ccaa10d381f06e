import type { Finding } from '../measure/finding.ts';
import { type Step, type Steps, toTheEnd } from '../measure/steps.ts';
import type { BlockChoice, Pattern } from '../pattern/schema.ts';
import { lower } from '../piecing/lower.ts';
import type { RecipeBook } from '../piecing/lowering.ts';
import { pressBlock } from '../pressing/pressBlock.ts';
import type { Recipe } from '../recipe/schema.ts';
import type { WorkedBlock } from './workedOut.ts';

export interface WorkedBlocks {
  readonly blocks: readonly WorkedBlock[];
  readonly findings: readonly Finding[];
}

/** The blocks of a pattern without regard to size, and what is wrong with those that cannot be drawn. */
export function workBlocks(pattern: Pattern): WorkedBlocks {
  return toTheEnd(workBlocksInSteps(pattern, ({ id }) => ({ doing: id, done: 0, of: 1 })));
}

/** The same, block by block. */
export function* workBlocksInSteps(pattern: Pattern, step: (block: BlockChoice) => Step): Steps<WorkedBlocks> {
  const book: RecipeBook = new Map(pattern.recipes.map((recipe) => [recipe.id, recipe]));
  const findings: Finding[] = [];
  const blocks: WorkedBlock[] = [];
  for (const [index, choice] of pattern.blocks.entries()) {
    yield step(choice);
    const path = `blocks[${index}]`;
    const recipe = book.get(choice.recipe);
    if (recipe === undefined) {
      findings.push({
        level: 'stops',
        what: `Block ${choice.id} asks for the recipe “${choice.recipe}”, which is not here.`,
        where: { path: `${path}.recipe` },
        mend: 'Add the recipe to the pattern.',
      });
      continue;
    }
    const worked = workBlock(choice, recipe, pattern, book, path);
    findings.push(...worked.findings);
    if (worked.block !== null) blocks.push(worked.block);
  }
  return { blocks, findings };
}

function workBlock(
  choice: BlockChoice,
  recipe: Recipe,
  pattern: Pattern,
  book: RecipeBook,
  path: string,
): { readonly block: WorkedBlock | null; readonly findings: readonly Finding[] } {
  const at = `recipes[${pattern.recipes.indexOf(recipe)}]`;
  const lowered = lower(recipe, choice.parameters, book, at);
  if (!lowered.ok) return { block: null, findings: lowered.findings };
  const piecing = lowered.value;
  const { fabricOf, findings } = fabricsFor(choice, recipe, pattern, path);
  const { plan, edged } = pressBlock(piecing);
  return { block: { id: choice.id, name: choice.name, piecing, pressing: plan, edged, fabricOf }, findings };
}

/** Each role to a fabric: the one chosen, else the fabric of the same id. A role without one borrows the first fabric. */
function fabricsFor(
  choice: BlockChoice,
  recipe: Recipe,
  pattern: Pattern,
  path: string,
): { readonly fabricOf: Readonly<Record<string, string>>; readonly findings: readonly Finding[] } {
  const known = new Set(pattern.fabrics.map((fabric) => fabric.id));
  const findings: Finding[] = [];
  const pairs = recipe.roles.map((role) => {
    const fabric = choice.fabrics[role.id] ?? role.id;
    if (known.has(fabric)) return [role.id, fabric] as const;
    findings.push({
      level: 'stops',
      what: `No fabric for “${role.name}” in block ${choice.id}: the pattern has no fabric “${fabric}”.`,
      where: { path: `${path}.fabrics.${role.id}`, on: choice.id },
      mend: 'Choose a fabric for it.',
    });
    return [role.id, pattern.fabrics[0]?.id ?? ''] as const;
  });
  const roles = new Set(recipe.roles.map(({ id }) => id));
  for (const role of Object.keys(choice.fabrics).filter((id) => !roles.has(id))) {
    findings.push({
      level: 'note',
      what: `Block ${choice.id} has no role “${role}” to give a fabric to.`,
      where: { path: `${path}.fabrics.${role}`, on: choice.id },
    });
  }
  return { fabricOf: Object.fromEntries(pairs), findings };
}
