import { count, type Traced, type TracedSize } from '../../measure/traced.ts';
import type { Method, MethodPlan, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { type BoardWork, boardWork } from './board.ts';
import { type Board, boardSize } from './boardSize.ts';
import { columnsApart, columnsSewn } from './columns.ts';
import { asScene, below } from './picture.ts';
import { setCrosscut, setPressed, stripCuts, stripsSewn } from './strips.ts';
import { sizeWords } from './sums.ts';

/** Nine-patches, checkerboards and rails from strip sets: what the three methods share. */

/** A method that makes one kind of unit from strip sets. */
export function fromStrips(kind: Board['kind'], id: string, name: string): Method {
  return {
    id,
    name,
    source:
      'Strips and sub-cuts: finished patch and a seam on each side; n strips w wide measure n(w − 2s) + 2s; common practice',
    makes: (unit) => unit.kind === kind,
    plan: (unit, scale) => stripPlan(ofBoard(unit), scale),
  };
}

/** @throws TypeError when the unit is no board: a method was asked to plan what it does not make */
export function ofBoard(unit: Unit): Board {
  if (unit.kind === 'nine-patch' || unit.kind === 'checkerboard' || unit.kind === 'rails') return unit;
  throw new TypeError(`A method for columns of rectangles was asked to make ${unit.key}`);
}

function stripPlan(unit: Board, scale: Scale): MethodPlan {
  const work = boardWork(unit, scale);
  const unfinished = boardSize(unit, scale);
  return {
    cuts: work.sets.flatMap((set) => stripCuts(set, work.patch)),
    yield: 1,
    unfinished,
    trimmed: false,
    stages: [...stripStages(work), ...lastStages(unit, work, unfinished)],
  };
}

function stripStages(work: BoardWork): readonly Stage[] {
  const { sets, pieces, patch, pressing } = work;
  const gap = pieces.strip / 2;
  const scene = (draw: typeof stripsSewn, alt: string) =>
    asScene(work.shown(below(gap, ...sets.map((set) => draw(set, pieces)))), alt);
  const most = Math.max(...sets.map(({ roles }) => roles.length));
  const more =
    most > 2 ? ' Add the next strip to these in the same way, and so on, in the order of the figure below.' : '';
  const which = sets.length > 1 ? 'For each of two strip sets lay' : 'Lay';
  return [
    {
      words: [`${which} the first two strips right sides together and sew them along one long side.${more}`],
      scene: scene(stripsSewn, 'Part of two strips right sides together, sewn along one long side.'),
    },
    {
      words: [`Open ${sets.length > 1 ? 'the strip sets' : 'the strip set'} and press the seams ${pressing}.`],
      scene: scene(setPressed, 'Part of each strip set, opened; arrows show the pressing.'),
    },
    {
      words: ['Square up one end. Cut pieces ', patch.width, ' wide', ...perUnit(work)],
      scene: scene(setCrosscut, 'Part of each strip set with cutting lines straight across it.'),
    },
  ];
}

/** How many sub-cuts of each set a unit takes. */
function perUnit({ sets }: BoardWork): readonly (string | Traced)[] {
  const many = sets.map(({ subCuts }) => count(subCuts, 'for each unit'));
  const [first, second] = many as [Traced, Traced?];
  if (second === undefined) return [': ', first, ' for each unit.'];
  return [': ', first, ' from the first set and ', second, ' from the second for each unit.'];
}

function lastStages(unit: Board, work: BoardWork, size: TracedSize): readonly Stage[] {
  const { columns, pieces, shown, toLeft } = work;
  const measure = sizeWords(unit, size);
  const whole = (words: string, alt: string): Stage => ({
    words: [`${words} The unit measures `, ...measure, '.'],
    scene: asScene(shown(columnsSewn(columns, pieces, toLeft)), alt),
  });
  if (columns.length === 1) return [whole('Each piece is a unit.', 'The finished unit.')];
  return [
    {
      words: [`Lay out the pieces of a unit ${layWords(unit)}`],
      scene: asScene(shown(columnsApart(columns, pieces)), 'The pieces side by side; arrows show how their seams lie.'),
    },
    whole(
      'Sew the pieces together, the seams pushed snugly against each other where they meet. Press the long seams as the arrows show.',
      'The finished unit; arrows show the pressing of its long seams.',
    ),
  ];
}

function layWords(unit: Board): string {
  if (unit.kind === 'nine-patch') return 'as shown: one from the second set between two from the first.';
  return 'as shown, so that the fabrics alternate; where only one strip set is sewn, every other piece is turned end for end.';
}
