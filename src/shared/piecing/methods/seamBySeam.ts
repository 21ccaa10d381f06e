import { workOf } from '../allowance/work.ts';
import type { Method, MethodPlan, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { loosePatchesOf } from '../seamTree.ts';
import { unitsInside } from '../unitsInside.ts';
import { cutSquare, laidOut, squareCuts, type Triangles, triangleLines, wholeSquares } from './cutTriangles.ts';
import { joinGroups } from './joinGroups.ts';
import { joinStages } from './joinStages.ts';
import { type LoosePieces, loosePieces, readyWords } from './loosePieces.ts';
import { ofKind } from './ofKind.ts';
import type { Picture } from './picture.ts';
import { rightTriangles } from './rightTriangles.ts';
import { roomToTrim } from './roomToTrim.ts';
import { beyondRim, squareOf } from './seamBySeamSize.ts';
import { seamOf, sizeWords, unfinishedSize } from './sums.ts';
import { unitPictures } from './template.ts';
import { trimStageOf } from './trimmed.ts';

type Pieced = Extract<Unit, { kind: 'pieced' }>;

/** A unit of its own seams whose right triangles are cut from squares, as a maker with a ruler cuts them. */
export const seamBySeam: Method = {
  id: 'seam-by-seam',
  name: 'Cut triangles, sewn seam by seam',
  source:
    'Squares cut once: finished and s(2 + √2) for a seam s, ⅞″ for ¼″; with the long side at the edge, cut twice: finished ' +
    'and s(2 + 2√2), 1¼″; at the edge up to the ruler and trimmed; computed, and common practice for setting triangles',
  makes: (unit) => unit.kind === 'pieced' && trianglesOf(unit).length > 0,
  plan: (unit, scale) => planOf(ofKind(unit, 'pieced'), scale),
};

function trianglesOf({ drawing, seams }: Pieced) {
  return rightTriangles(drawing, loosePatchesOf(seams));
}

function planOf(unit: Pieced, scale: Scale): MethodPlan {
  const { drawing, seams } = unit;
  const triangles = trianglesOf(unit);
  const room = roomToTrim(unit, scale);
  const lines = triangleLines(triangles.map((triangle) => squareOf(triangle, scale, room)));
  const cut = new Map(triangles.map((triangle) => [triangle.patch, triangle]));
  const beyond = new Map(triangles.map((triangle) => [triangle.patch, beyondRim(triangle, scale, room)]));
  const work = workOf(unit, scale.grid, {
    seam: scale.seam,
    rim: (patch) => beyond.get(patch) ?? scale.seam,
    points: (patch) => (cut.has(patch) ? 'pointed' : 'blunted'),
  });
  const rest = new Set(loosePatchesOf(seams).filter((patch) => !cut.has(patch)));
  const pieces = loosePieces(work, drawing, rest, scale, true);
  const units = wholeSquares(lines);
  const takes = unitsInside(unit);
  const unfinished = unfinishedSize(unit.width, unit.height, scale);
  const trimmed = triangles.some(({ legsOnRim, longOnRim }) => legsOnRim > 0 || longOnRim);
  const measures = [' The unit measures ', ...sizeWords(unit, unfinished), '.'];
  return {
    cuts: [...squareCuts(lines, units), ...pieces.cuts.map((one) => ({ ...one, count: one.count * units }))],
    yield: units,
    unfinished,
    trimmed,
    stages: [
      cutStage(lines, pieces, unitPictures(work, seams), readyWords(takes, scale)),
      ...joinStages(work, joinGroups(drawing, seams), scale, trimmed ? [] : measures),
      ...(trimmed ? [trimStage(unit, scale, work)] : []),
    ],
    ...(takes.length === 0 ? {} : { takes }),
    templates: pieces.templates,
  };
}

/** What is at hand before the unit is sewn: squares with the cuts through them, every other piece, units made before. */
function cutStage(
  lines: readonly Triangles[],
  pieces: LoosePieces,
  units: readonly Picture[],
  ready: Stage['words'],
): Stage {
  const squares = lines.map(({ role, square, from }) => cutSquare(role, square.value, from));
  const words = [squareWords(lines), ...pieces.words].join(' ');
  const alt = 'One of each square that is cut into triangles with the cuts through it, and of everything else at hand.';
  return { words: [words, ...ready], scene: laidOut([...squares, ...pieces.pictures, ...units], alt) };
}

function squareWords(lines: readonly Triangles[]): string {
  const [once, twice] = [lines.some(({ from }) => from === 2), lines.some(({ from }) => from === 4)];
  if (!twice) return 'Cut the squares for triangles once from corner to corner: two from each.';
  if (!once) return 'Cut the squares for triangles on both diagonals: four from each.';
  return (
    'Cut the squares for triangles once from corner to corner, but on both diagonals those whose triangles lie with their ' +
    'long side at the edge of the unit.'
  );
}

function trimStage(unit: Pieced, scale: Scale, work: ReturnType<typeof workOf>): Stage {
  const unfinished = unfinishedSize(unit.width, unit.height, scale);
  return trimStageOf(work, unfinished, {
    words: [
      'The triangles at the edge are cut a little large. Trim each unit to ',
      ...sizeWords(unit, unfinished),
      ', keeping ',
      seamOf(scale),
      ' beyond the points where seams meet the edge.',
    ],
    alt: 'The whole unit, and the lines it is trimmed on.',
    arrows: [],
  });
}
