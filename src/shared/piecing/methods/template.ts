import { flatCorners } from '../../drawing/curve.ts';
import { doubleArea } from '../../drawing/drawing.ts';
import type { Point } from '../../drawing/turn.ts';
import { same } from '../../measure/inches.ts';
import { count, given, rounded, type Traced } from '../../measure/traced.ts';
import { type Work, workOf } from '../allowance/work.ts';
import { keyed } from '../distinct.ts';
import { seamsFor } from '../find/seams/seams.ts';
import type { Cut, Method, MethodPlan, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { loosePatchesOf, type SeamTree, type SeamUnit, unitsOf } from '../seamTree.ts';
import { shapesOf } from '../templates/shapes.ts';
import type { Template } from '../templates/template.ts';
import { templateOf } from '../templates/templatesOf.ts';
import { unitCalled } from '../unitNames.ts';
import { type UnitInside, unitsInside } from '../unitsInside.ts';
import { laidOut } from './cutTriangles.ts';
import { joinGroups } from './joinGroups.ts';
import { joinStages } from './joinStages.ts';
import { openedPart } from './joins.ts';
import { picture } from './picture.ts';
import { inWords } from './pieceNames.ts';
import { cloth } from './pieces.ts';
import { shapeWord, sizeWords, unfinishedSize } from './sums.ts';

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
  const templates = shapesOf(drawing, new Set(loosePatchesOf(tree))).map((shape) => templateOf(work, shape));
  const takes = unitsInside(unit);
  return {
    cuts: templates.flatMap((template, i) => cutsOf(template, i + 1, scale)),
    yield: 1,
    unfinished,
    trimmed: false,
    stages: [
      cutStage(work, tree, templates, takes, scale),
      ...joinStages(work, joinGroups(drawing, tree), scale, sizeWords(unit, unfinished)),
    ],
    ...(takes.length === 0 ? {} : { takes }),
    templates: templates.filter(({ finished }) => !isRectangle(finished)),
  };
}

/** How the unit is sewn: as was found for it, or, for a unit of the trade, as is found for its patches. */
function treeOf(unit: Unit, drawing: Work['drawing']): SeamTree {
  return unit.kind === 'pieced' ? unit.seams : seamsFor(drawing);
}

/** What is cut round one template, one line for each role. A rectangle needs no template: it is cut with the ruler. */
function cutsOf({ shape, cut, finished, pieces }: Template, number: number, scale: Scale): readonly Cut[] {
  const rectangular = isRectangle(finished);
  const size = (of: 'x' | 'y') => {
    const places = cut.map((point) => point[of]);
    const length = Math.max(...places) - Math.min(...places);
    const name = rectangular ? 'finished and its seams' : 'template with its seams';
    return rounded(given(length, name), scale.step, rectangular ? 'near' : 'up');
  };
  const [width, height] = [size('x'), size('y')];
  return pieces.map(({ role, count, reversed }) => {
    const piece = { role, width, height, count: count + reversed, patches: 1 };
    if (!rectangular) return { ...piece, use: `template ${inWords(number)}`, shape };
    return { ...piece, use: `${shapeWord(width.value, height.value)} ${inWords(number)}` };
  });
}

/** Whether an outline is an upright rectangle: it fills its box. */
function isRectangle(outline: readonly Point[]): boolean {
  const side = (of: 'x' | 'y') => {
    const places = outline.map((point) => point[of]);
    return Math.max(...places) - Math.min(...places);
  };
  return same(doubleArea(outline) / 2, side('x') * side('y'));
}

/** What is at hand before the unit is sewn: pieces cut round templates and with the ruler, and units made before. */
function cutStage(
  work: Work,
  tree: SeamTree,
  templates: readonly Template[],
  takes: readonly UnitInside[],
  scale: Scale,
): Stage {
  const shown = templates.flatMap(({ cut, notches, pieces }) => {
    return pieces.map(({ role }) => {
      const lines = notches.map(({ from, to }) => ({ kind: 'marked', from, to }) as const);
      return picture({ cloth: [cloth(role, flatCorners(cut))], lines });
    });
  });
  const units = firstOfEach(tree).map(({ patches }) => openedPart(work, new Set(patches)));
  const alt =
    takes.length === 0 ? 'One piece of each template, cut out.' : 'One of each piece, cut out, and of each unit.';
  return { words: [...cutWords(templates), ...readyWords(takes, scale)], scene: laidOut([...shown, ...units], alt) };
}

function cutWords(templates: readonly Template[]): readonly string[] {
  const shaped = templates.filter(({ finished }) => !isRectangle(finished));
  const ruled = templates.length > shaped.length ? ['Cut squares and rectangles to size.'] : [];
  if (shaped.length === 0) return [ruled.join(' ')];
  const turned = shaped.some(({ pieces }) => pieces.some(({ reversed }) => reversed > 0))
    ? ['Where the template says so, turn it over for some of them.']
    : [];
  const notched = templates.some(({ notches }) => notches.length > 0) ? ['Mark the notches.'] : [];
  const laid =
    'Lay each template on the right side of its fabric, the arrow along the straight grain, and cut on the outer line.';
  return [[laid, ...turned, ...notched, ...ruled].join(' ')];
}

/** The units that are made before, counted. */
function readyWords(takes: readonly UnitInside[], scale: Scale): readonly (string | Traced)[] {
  if (takes.length === 0) return [];
  const each = takes.flatMap(({ unit, count: many }, i): readonly (string | Traced)[] => {
    const joint = i === 0 ? '' : i === takes.length - 1 ? ', and ' : ', ';
    const size = sizeWords(unit, unfinishedSize(unit.width, unit.height, scale));
    return [joint, count(many, 'for each unit'), ` ${unitCalled(unit.kind, many)}, `, ...size];
  });
  return [' For each have ready, made before: ', ...each, '.'];
}

/** One of each different unit that stands in the tree. */
function firstOfEach(tree: SeamTree): readonly SeamUnit[] {
  const first = new Map<string, SeamUnit>();
  for (const unit of unitsOf(tree)) {
    const { key } = keyed(unit.shape);
    if (!first.has(key)) first.set(key, unit);
  }
  return [...first.values()];
}
