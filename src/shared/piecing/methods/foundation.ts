import { workOf } from '../allowance/work.ts';
import { papersOf } from '../foundation/paper.ts';
import { canSewOnPaper, type FoundationSections, foundationSections } from '../foundation/sections.ts';
import type { Method } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { cutPieces } from './foundationPieces.ts';
import { foundationStages } from './foundationStages.ts';
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

/** Any unit with straight seams from edge to edge, sewn on printed papers, section by section. */
export const foundation: Method = {
  id: 'foundation',
  name: 'Sewn on paper',
  source:
    'Each patch, a seam all round and ¼″ to spare, up to the ruler; trimmed on the paper’s lines; common practice',
  makes: (unit) => KINDS.has(unit.kind) && canSew(unit),
  plan(unit, scale) {
    const found = sectionsOf(unit);
    if (!found.ok) throw new TypeError(found.why.what);
    const { plan } = found;
    const work = workOf(unit, scale.grid, { seam: scale.seam, points: 'blunted' });
    const papers = papersOf(work, plan);
    const unfinished = unfinishedSize(unit.width, unit.height, scale);
    const pieces = cutPieces(unit, plan, papers, scale);
    const seams = plan.sections.reduce((sum, section) => sum + section.seams.length, 0);
    return {
      cuts: pieces.map(({ cut }) => cut),
      yield: 1,
      unfinished,
      trimmed: false,
      trims: seams + papers.length,
      stages: foundationStages({ work, plan, papers, pieces, scale, measure: sizeWords(unit, unfinished) }),
      foundations: papers,
    };
  },
};

const able = new WeakMap<Unit, boolean>();

function canSew(unit: Unit): boolean {
  const before = able.get(unit);
  if (before !== undefined) return before;
  const can = canSewOnPaper(workOf(unit, 1, { seam: 0 }).drawing);
  able.set(unit, can);
  return can;
}

const known = new WeakMap<Unit, FoundationSections>();

/** A unit's sections do not depend on its size: they are looked for once. */
function sectionsOf(unit: Unit): FoundationSections {
  const before = known.get(unit);
  if (before !== undefined) return before;
  const found = foundationSections(workOf(unit, 1, { seam: 0 }).drawing);
  known.set(unit, found);
  return found;
}
