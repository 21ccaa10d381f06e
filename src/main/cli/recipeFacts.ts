import type { PieceLine } from '../../shared/cloth/cloth.ts';
import type { Finding } from '../../shared/measure/finding.ts';
import type { TracedSize } from '../../shared/measure/traced.ts';
import { fabricsForRoles, freshPattern } from '../../shared/pattern/fresh.ts';
import { withHeld } from '../../shared/pattern/recipes.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { type FoundationSections, foundationSections } from '../../shared/piecing/foundation/sections.ts';
import type { BlockPart } from '../../shared/piecing/piecing.ts';
import type { SeamTree } from '../../shared/piecing/seamTree.ts';
import { unitName } from '../../shared/piecing/unitNames.ts';
import type { SizedBlock, SizedUnit } from '../../shared/quilt/sized.ts';
import type { Recipe } from '../../shared/recipe/schema.ts';
import { type MethodPrice, methodPrices } from '../../shared/workroom/methodPrices.ts';
import { type Skill, skillsOf } from '../../shared/workroom/recipeFacets.ts';
import { workOut } from '../../shared/workroom/workOut.ts';

/** What `recipe` tells of one recipe. */
export interface RecipeFacts {
  readonly id: string;
  readonly name: string;
  /** The usual finished size in inches; the height follows from the grid. */
  readonly finished: { readonly width: number; readonly height: number };
  readonly roles: Recipe['roles'];
  /** Null when the recipe cannot be drawn; the findings say why. */
  readonly block: BlockFacts | null;
  readonly findings: readonly Finding[];
}

/** One block of a recipe at its usual size. */
export interface BlockFacts {
  readonly grid: { readonly width: number; readonly height: number };
  readonly patches: number;
  /** What its maker must be able to do. */
  readonly skills: readonly Skill[];
  readonly units: readonly UnitFacts[];
  /** How it is sewn; units by their number. */
  readonly seams: BlockPart;
  /** What is cut for one block; each role is a fabric of its own. */
  readonly pieces: readonly PieceLine[];
  readonly unfinished: TracedSize;
  /** Whether the whole block can be sewn on paper: its sections, their patches in order, and how they are joined, or why not. */
  readonly onPaper: FoundationSections;
}

/** One distinct unit. */
interface UnitFacts {
  readonly key: string;
  readonly name: string;
  readonly count: number;
  readonly finished: { readonly width: number; readonly height: number };
  readonly unfinished: TracedSize;
  readonly method: PricedMethod;
  readonly others: readonly PricedMethod[];
  /** How a pieced unit is sewn from the patches of its own drawing and the units of the trade in it; null for any other. */
  readonly seams: SeamTree | null;
  /** Units of the trade that are made before it, and how many one takes. */
  readonly takes: readonly { readonly key: string; readonly name: string; readonly count: number }[];
}

/** A way of making a unit and what it asks for the units of one block. */
interface PricedMethod {
  readonly id: string;
  readonly name: string;
  /** Pieces cut, and units left over from whole batches. */
  readonly pieces: number;
  readonly spare: number;
  /** Minutes of trimming, square inches that end in no patch and no seam, inches of cloth across its usable width. */
  readonly trimming: number;
  readonly waste: number;
  readonly cloth: number;
}

/** A recipe and one block of it at its usual size. `library` holds the recipes it may hold. */
export function recipeFacts(recipe: Recipe, library: readonly Recipe[]): RecipeFacts {
  const worked = workOut(oneBlock(recipe, library));
  const [size] = worked.sizes;
  const [block] = worked.blocks;
  const { id, name, roles, finished: width } = recipe;
  const sized = size?.blocks[0];
  const findings = worked.findings.map(inRecipe);
  if (size === undefined || block === undefined || sized === undefined) {
    return { id, name, finished: { width, height: width }, roles, block: null, findings };
  }
  const { drawing, root } = block.piecing;
  const facts: BlockFacts = {
    grid: { width: drawing.width, height: drawing.height },
    patches: drawing.patches.length,
    skills: skillsOf(block.piecing),
    units: sized.units.map((unit) => unitFacts(unit, sized, worked.pattern.house)),
    seams: root,
    pieces: size.cloth.pieces.filter(({ use }) => use.some((one) => one.block !== null)),
    unfinished: sized.unfinished,
    onPaper: foundationSections(drawing),
  };
  return { id, name, finished: size.quilt.block, roles, block: facts, findings };
}

/** A pattern of one block and nothing else. Its words and date are never seen. */
function oneBlock(recipe: Recipe, library: readonly Recipe[]): Pattern {
  const [, ...held] = withHeld(recipe, library);
  const about = { id: recipe.id, title: recipe.name, designer: recipe.name, date: '2000-01-01' };
  const pattern = freshPattern(recipe, held, about);
  const size = { id: 'block', name: 'its usual size', across: 1, down: 1, block: recipe.finished, borders: {} };
  return { ...pattern, fabrics: fabricsForRoles(recipe.roles), borders: [], sizes: [size] };
}

/** A finding with its place in the recipe instead of the pattern about it. */
function inRecipe(finding: Finding): Finding {
  const path = finding.where.path.startsWith('sizes[0]')
    ? 'finished'
    : finding.where.path.replace(/^recipes\[0\]\.?/, '').replace(/^blocks\[0\]\.?(recipe)?/, '');
  return { ...finding, where: { ...finding.where, path } };
}

function unitFacts(made: SizedUnit, { grid, units }: SizedBlock, house: Pattern['house']): UnitFacts {
  const { unit, perBlock, plan } = made;
  const scale = { grid, seam: house.seam, step: house.step };
  const [method, ...others] = methodPrices(made, scale, house.usableWidth, units).map(priced) as [PricedMethod];
  return {
    key: unit.key,
    name: unitName(unit),
    count: perBlock,
    finished: { width: unit.width * grid, height: unit.height * grid },
    unfinished: plan.unfinished,
    method,
    others,
    seams: unit.kind === 'pieced' ? unit.seams : null,
    takes: (plan.takes ?? []).map(({ unit: inside, count }) => ({ key: inside.key, name: unitName(inside), count })),
  };
}

function priced({ method: { id, name }, pieces, spare, trimming, waste, cloth }: MethodPrice): PricedMethod {
  return { id, name, pieces: pieces.value, spare, trimming: trimming.value, waste: waste.value, cloth: cloth.value };
}
