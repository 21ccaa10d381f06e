import { flatCorners } from '../../drawing/curve.ts';
import { doubleArea } from '../../drawing/drawing.ts';
import type { Point } from '../../drawing/turn.ts';
import { same } from '../../measure/inches.ts';
import { given, rounded } from '../../measure/traced.ts';
import { type Work, workOf } from '../allowance/work.ts';
import { seamsFor } from '../find/seams/seams.ts';
import type { Cut, Method, MethodPlan, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import type { SeamTree } from '../seamTree.ts';
import { shapesOf } from '../templates/shapes.ts';
import type { Template } from '../templates/template.ts';
import { templateOf } from '../templates/templatesOf.ts';
import { laidOut } from './cutTriangles.ts';
import { joinGroups } from './joinGroups.ts';
import { joinStages } from './joinStages.ts';
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
  const templates = shapesOf(drawing).map((shape) => templateOf(work, shape));
  return {
    cuts: templates.flatMap((template, i) => cutsOf(template, i + 1, scale)),
    yield: 1,
    unfinished,
    trimmed: false,
    stages: [
      cutStage(templates),
      ...joinStages(work, joinGroups(drawing, treeOf(unit, drawing)), scale, sizeWords(unit, unfinished)),
    ],
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

function cutStage(templates: readonly Template[]): Stage {
  const shown = templates.flatMap(({ cut, notches, pieces }) => {
    return pieces.map(({ role }) => {
      const lines = notches.map(({ from, to }) => ({ kind: 'marked', from, to }) as const);
      return picture({ cloth: [cloth(role, flatCorners(cut))], lines });
    });
  });
  const turned = templates.some(({ pieces }) => pieces.some(({ reversed }) => reversed > 0))
    ? ' Where the template says so, turn it over for some of them.'
    : '';
  const notched = templates.some(({ notches }) => notches.length > 0) ? ' Mark the notches.' : '';
  const plain = templates.some(({ finished }) => isRectangle(finished)) ? ' Cut squares and rectangles to size.' : '';
  const words = [
    `Lay each template on the right side of its fabric, the arrow along the straight grain, and cut on the outer line.${turned}${notched}${plain}`,
  ];
  return { words, scene: laidOut(shown, 'One piece of each template, cut out.') };
}
