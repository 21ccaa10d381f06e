import { flatCorners } from '../../drawing/curve.ts';
import { doubleArea } from '../../drawing/drawing.ts';
import type { Point } from '../../drawing/turn.ts';
import { same } from '../../measure/inches.ts';
import { count, given, rounded, type Traced } from '../../measure/traced.ts';
import type { Work } from '../allowance/work.ts';
import type { Cut, Scale } from '../method.ts';
import { shapesOf } from '../templates/shapes.ts';
import type { Template } from '../templates/template.ts';
import { templateOf } from '../templates/templatesOf.ts';
import { unitCalled } from '../unitNames.ts';
import type { UnitInside } from '../unitsInside.ts';
import { type Picture, picture } from './picture.ts';
import { inWords } from './pieceNames.ts';
import { cloth } from './pieces.ts';
import { shapeWord, sizeWords, unfinishedSize } from './sums.ts';

/** Patches of a unit that are each cut by themselves: rectangles with the ruler, everything else round a template. */
export interface LoosePieces {
  /** For one unit. */
  readonly cuts: readonly Cut[];
  /** The shapes that are cut round; rectangles need none. */
  readonly templates: readonly Template[];
  /** How they are cut, a sentence or more; empty when there are none. */
  readonly words: readonly string[];
  /** One of each. */
  readonly pictures: readonly Picture[];
}

/**
 * What is cut for some patches of a unit, as large as each needs.
 * @param drawing the unit's own drawing, in grid units: shapes are told apart there, the same at every scale
 * @param squares whether squares and rectangles are cut for something else as well, so that these are "the other" ones
 */
export function loosePieces(
  work: Work,
  drawing: Work['drawing'],
  patches: ReadonlySet<number>,
  scale: Scale,
  squares = false,
): LoosePieces {
  const all = shapesOf(drawing, patches).map((shape) => templateOf(work, shape));
  const templates = all.filter(({ finished }) => !isRectangle(finished));
  const ruled = squares ? 'Cut the other squares and rectangles to size.' : 'Cut squares and rectangles to size.';
  return {
    cuts: all.flatMap((template, i) => cutsOf(template, i + 1, scale)),
    templates,
    words: [...templateWords(templates), ...(all.length > templates.length ? [ruled] : [])],
    pictures: all.flatMap(({ cut, notches, pieces }) =>
      pieces.map(({ role }) => {
        const lines = notches.map(({ from, to }) => ({ kind: 'marked', from, to }) as const);
        return picture({ cloth: [cloth(role, flatCorners(cut))], lines });
      }),
    ),
  };
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

function templateWords(templates: readonly Template[]): readonly string[] {
  if (templates.length === 0) return [];
  const turned = templates.some(({ pieces }) => pieces.some(({ reversed }) => reversed > 0))
    ? ['Where the template says so, turn it over for some of them.']
    : [];
  const notched = templates.some(({ notches }) => notches.length > 0) ? ['Mark the notches.'] : [];
  const laid =
    'Lay each template on the right side of its fabric, the arrow along the straight grain, and cut on the outer line.';
  return [laid, ...turned, ...notched];
}

/** The units that are made before, counted. */
export function readyWords(takes: readonly UnitInside[], scale: Scale): readonly (string | Traced)[] {
  if (takes.length === 0) return [];
  const each = takes.flatMap(({ unit, count: many }, i): readonly (string | Traced)[] => {
    const joint = i === 0 ? '' : i === takes.length - 1 ? ', and ' : ', ';
    const size = sizeWords(unit, unfinishedSize(unit.width, unit.height, scale));
    return [joint, count(many, 'for each unit'), ` ${unitCalled(unit.kind, many)}, `, ...size];
  });
  return [' For each have ready, made before: ', ...each, '.'];
}
