import { flatCorners } from '../../drawing/curve.ts';
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
    templates,
  };
}

/** How the unit is sewn: as was found for it, or, for a unit of the trade, as is found for its patches. */
function treeOf(unit: Unit, drawing: Work['drawing']): SeamTree {
  return unit.kind === 'pieced' ? unit.seams : seamsFor(drawing);
}

/** The rectangle one template is cut from, up to the ruler; one line for each role. */
function cutsOf({ shape, cut, pieces }: Template, number: number, scale: Scale): readonly Cut[] {
  const size = (of: 'x' | 'y') => {
    const places = cut.map((point) => point[of]);
    const length = Math.max(...places) - Math.min(...places);
    return rounded(given(length, 'template with its seams'), scale.step, 'up');
  };
  const [width, height] = [size('x'), size('y')];
  return pieces.map(({ role, count, reversed }) => {
    return { role, width, height, count: count + reversed, patches: 1, use: `template ${inWords(number)}`, shape };
  });
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
  const words = [
    `Lay each template on the right side of its fabric, the arrow along the straight grain, and cut on the outer line.${turned}${notched}`,
  ];
  return { words, scene: laidOut(shown, 'One piece of each template, cut out.') };
}
