import { type Work, workOf } from '../allowance/work.ts';
import { keyed } from '../distinct.ts';
import { seamsFor } from '../find/seams/seams.ts';
import type { Method, MethodPlan, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { loosePatchesOf, type SeamTree, type SeamUnit, unitsOf } from '../seamTree.ts';
import { unitsInside } from '../unitsInside.ts';
import { laidOut } from './cutTriangles.ts';
import { joinGroups } from './joinGroups.ts';
import { joinStages } from './joinStages.ts';
import { openedPart } from './joins.ts';
import { type LoosePieces, loosePieces, readyWords } from './loosePieces.ts';
import type { Picture } from './picture.ts';
import { sizeWords, unfinishedSize } from './sums.ts';

const KINDS: ReadonlySet<Unit['kind']> = new Set([
  'geese',
  'qst',
  'three-patch',
  'square-in-square',
  'half-rectangle',
  'corners',
  'pieced',
]);

/** Any unit with slanting or curved seams, each patch cut round its template. */
export const templateCut: Method = {
  id: 'template',
  name: 'Templates with seam allowance',
  source: 'Each patch and a seam all round, points blunted; common practice',
  makes: (unit) => KINDS.has(unit.kind),
  plan: templatePlan,
};

/** A unit whose patches are cut round templates and sewn in the order of its seams. */
export function templatePlan(unit: Unit, scale: Scale): MethodPlan {
  const work = workOf(unit, scale.grid, { seam: scale.seam, points: 'blunted' });
  const drawing = workOf(unit, 1, { seam: scale.seam }).drawing;
  const unfinished = unfinishedSize(unit.width, unit.height, scale);
  const tree = treeOf(unit, drawing);
  const pieces = loosePieces(work, drawing, new Set(loosePatchesOf(tree)), scale);
  const takes = unitsInside(unit);
  const measures = [' The unit measures ', ...sizeWords(unit, unfinished), '.'];
  return {
    cuts: pieces.cuts,
    yield: 1,
    unfinished,
    trimmed: false,
    stages: [
      cutStage(pieces, unitPictures(work, tree), readyWords(takes, scale)),
      ...joinStages(work, joinGroups(drawing, tree), scale, measures),
    ],
    ...(takes.length === 0 ? {} : { takes }),
    templates: pieces.templates,
  };
}

/** How the unit is sewn: as was found for it, or, for a unit of the trade, as is found for its patches. */
function treeOf(unit: Unit, drawing: Work['drawing']): SeamTree {
  return unit.kind === 'pieced' ? unit.seams : seamsFor(drawing);
}

/** What is at hand before the unit is sewn: pieces cut round templates and with the ruler, and units made before. */
function cutStage({ words, pictures }: LoosePieces, units: readonly Picture[], ready: Stage['words']): Stage {
  const alt =
    units.length === 0 ? 'One piece of each template, cut out.' : 'One of each piece, cut out, and of each unit.';
  return { words: [words.join(' '), ...ready], scene: laidOut([...pictures, ...units], alt) };
}

/** One of each different unit that is made before and sewn in whole. */
export function unitPictures(work: Work, tree: SeamTree): readonly Picture[] {
  const first = new Map<string, SeamUnit>();
  for (const unit of unitsOf(tree)) {
    const { key } = keyed(unit.shape);
    if (!first.has(key)) first.set(key, unit);
  }
  return [...first.values()].map(({ patches }) => openedPart(work, new Set(patches)));
}
