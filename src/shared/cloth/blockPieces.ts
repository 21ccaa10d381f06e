import { count, minus, named, over, plus, rounded, type Traced, times } from '../measure/traced.ts';
import { piecesInEach, type Run, type SizedBlock, type SizedUnit } from '../quilt/sized.ts';
import type { PieceLine, PieceUse } from './cloth.ts';
import { cutKey, type FabricOf, fabricFor, type Letters } from './letters.ts';
import type { UnitCut } from './unitCut.ts';
import { isSquare, lyingIn, type Upright } from './upright.ts';

/** Every cut of every unit the quilt takes, in order. */
export function unitCuts(blocks: readonly SizedBlock[], fabricOf: FabricOf, letters: Letters): readonly UnitCut[] {
  return blocks.flatMap((block) =>
    block.units
      .filter((sized) => sized.needed > 0)
      .flatMap((sized) =>
        sized.plan.cuts.map((cut, index) => ({
          block: block.id,
          sized,
          cut,
          letter: letters[cutKey(block.id, sized.unit.key, index)] ?? '',
          fabric: fabricFor(fabricOf, block.id, cut.role),
        })),
      ),
  );
}

/** Batches made of a unit: whole ones, enough for the quilt with what its likes left over. */
function batchesOf({ needed, runs, plan }: SizedUnit): Traced {
  if (plan.yield === 1) return count(needed, 'needed');
  const [first, ...rest] = runs.map((run) => batchesFor(run, plan.yield));
  if (first === undefined) return count(0, 'units');
  return rest.length === 0 ? first : plus(first, ...rest);
}

function batchesFor({ mirrored, before, needed }: Run, at: number): Traced {
  const units = count(needed, mirrored ? 'mirror images' : 'units');
  const left = Math.min(needed, (at - (before % at)) % at);
  const more = left === 0 ? units : minus(units, count(left, 'left over from others'));
  return rounded(over(more, count(at, 'at a time')), 1, 'up');
}

/** Pieces cut for one cut of a unit: so many a batch, or, of what needs no batch, so many a unit. */
export function piecesOf({ sized, cut }: UnitCut): Traced {
  const inEach = piecesInEach(cut, sized.plan);
  if (inEach !== null) {
    const units = count(sized.needed, 'needed');
    return inEach === 1 ? units : times(units, count(inEach, 'in each'));
  }
  const batches = batchesOf(sized);
  return cut.count === 1 ? batches : times(batches, count(cut.count, sized.plan.yield === 1 ? 'in each' : 'each time'));
}

/** Of `pieces` cut, those the units needed do not use, in whole pieces. */
export function spareOf({ sized, cut }: UnitCut, pieces: number): number {
  const used = (units: number) => Math.ceil((units * cut.count) / sized.plan.yield - 1e-9);
  return sized.runs.reduce((left, { before, needed }) => left - used(before + needed) + used(before), pieces);
}

const UNIT_WORDS: Readonly<Record<SizedUnit['unit']['kind'], string>> = {
  plain: '',
  log: '',
  hst: 'half-square triangles',
  geese: 'flying geese',
  'four-patch': 'four-patches',
  corners: 'stitch-and-flip corners',
  qst: 'quarter-square triangles',
  'three-patch': 'three-patch quarter-square triangles',
  'square-in-square': 'squares in a square',
  'half-rectangle': 'half-rectangle triangles',
  'nine-patch': 'nine-patches',
  checkerboard: 'checkerboards',
  rails: 'rails',
  'quarter-circle': 'quarter circles',
  pieced: 'pieced units',
};

export function useOf(of: UnitCut, pieces: number): PieceUse {
  const unit = UNIT_WORDS[of.sized.unit.kind];
  return {
    block: of.block,
    unit: of.sized.unit.key,
    words: `Block ${of.block}, ${unit === '' ? '' : `${unit}, `}${of.cut.use}`,
    patches: Math.round((of.sized.needed * of.cut.count * of.cut.patches) / of.sized.plan.yield),
    count: pieces,
  };
}

/**
 * The lines of the chart for pieces cut by themselves, one for each letter; two where a print has a direction and pieces lie
 * both ways in the quilt.
 * @param spares pieces cut of every line beyond those that are sewn
 */
export function blockLines(cuts: readonly UnitCut[], upright: Upright, spares = 0): readonly PieceLine[] {
  const byLetter = new Map<string, UnitCut[]>();
  for (const of of cuts) {
    if (of.cut.stripSet !== undefined) continue;
    byLetter.set(of.letter, [...(byLetter.get(of.letter) ?? []), of]);
  }
  return [...byLetter.values()].flatMap((own) => linesFor(own, upright)).map((line) => withSpares(line, spares));
}

/** As many pieces more as the house cuts of every kind, in case one goes wrong. */
function withSpares(line: PieceLine, spares: number): PieceLine {
  if (spares === 0) return line;
  const many = named(line.count, 'to sew');
  return { ...line, count: plus(many, count(spares, 'spare')), spare: line.spare + spares };
}

function linesFor(cuts: readonly UnitCut[], upright: Upright): readonly PieceLine[] {
  const [first] = cuts as readonly [UnitCut, ...UnitCut[]];
  if (!upright.isDirected(first.fabric)) return [pieceLine(cuts)];
  if (isSquare(first.cut)) return [{ ...pieceLine(cuts), upright: true }];
  return [false, true].flatMap((lengthwise): PieceLine[] => {
    const own = lyingIn(cuts, lengthwise, upright);
    if (own.length === 0) return [];
    const line = { ...pieceLine(own), upright: true } as const;
    return [lengthwise ? { ...line, lengthwise: true } : line];
  });
}

function pieceLine(cuts: readonly UnitCut[]): PieceLine {
  const [first, ...rest] = cuts as readonly [UnitCut, ...UnitCut[]];
  const { width, height } = first.cut;
  const lies = width.value >= height.value;
  return {
    letter: first.letter,
    fabric: first.fabric,
    width: lies ? width : height,
    height: lies ? height : width,
    count: rest.length === 0 ? piecesOf(first) : plus(piecesOf(first), ...rest.map(piecesOf)),
    spare: cuts.reduce((sum, of) => sum + spareOf(of, piecesOf(of).value), 0),
    use: cuts.map((of) => useOf(of, piecesOf(of).value)),
    cutAs: 'piece',
  };
}
