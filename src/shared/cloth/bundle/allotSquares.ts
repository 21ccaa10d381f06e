import type { Inches } from '../../measure/inches.ts';
import type { Value } from '../../recipe/schema.ts';
import { BLOCKS, fabricsOf, type Part, type Shortage, type Supply } from './allotment.ts';
import { assign, type Penalties, type Slot } from './assign.ts';
import { packed, planSquares, type SquarePack, type SquaresPlan } from './planSquares.ts';
import { type LaidGroup, laidGroups } from './squareLaid.ts';
import { type FilledSquares, fillSquares } from './squares.ts';
import type { Group, Wants } from './wants.ts';

/** Squares of one value. They hold pieces for blocks only; nothing is joined from them. */
export function allotSquares(value: Value, wants: Wants, supply: Supply, penalty: Penalties): Part {
  const have = supply.values[value];
  const plan = planSquares(wants, value, supply.length);
  const fabrics = fabricsOf(supply, value);
  const fabricOf = (square: number) => (fabrics > 0 ? square % fabrics : square) + 1;
  const filled = best(plan, have, fabricOf, penalty);
  const used = filled.squares.length;
  // Where a fabric does meet itself a block has been given fewer squares than it has pieces.
  const least = filled.clashes > 0 ? plan.least : Math.max(plan.least, plan.inOneBlock);
  return {
    use: { value, have, forBlocks: used, least, forLong: 0, spare: Math.max(0, have - used) },
    strips: filled.squares.map((own, i) => {
      const laid = filled.laid[i] ?? laidAlone(own, supply.length);
      return { number: i + 1, value, fabric: fabricOf(i), groups: own, long: [], left: 0, square: true, laid };
    }),
    short: shortages(plan, value, Math.max(0, used - have)),
    assigned: filled,
  };
}

function shortages({ lost }: SquaresPlan, value: Value, strips: number): readonly Shortage[] {
  const longest = Math.max(0, ...lost.map(({ length }) => length));
  if (lost.length > 0) return [{ words: BLOCKS, value, strips, tooLong: longest, square: true }];
  return strips > 0 ? [{ words: BLOCKS, value, strips, square: true }] : [];
}

/**
 * The best of several ways: squares as they are planned, with each piece where it meets least; square by square, each piece where
 * it meets nothing; and where that takes more than there are, as few as can be. Squares in which nothing meets and
 * that are there come first, then those that are there, then the fewest.
 */
function best(
  plan: SquaresPlan,
  have: number,
  fabricOf: (square: number) => number,
  penalty: Penalties,
): FilledSquares {
  const planned = assigned(plan, fabricOf, penalty);
  if (planned.clashes === 0 && planned.squares.length <= Math.max(plan.least, plan.inOneBlock)) return planned;
  const apart = fillSquares(plan.fits, fabricOf, penalty, false, plan.holds);
  const ways = [planned, apart];
  if (ways.every(({ squares }) => squares.length > have)) {
    ways.push(fillSquares(plan.fits, fabricOf, penalty, true, plan.holds));
  }
  const rank = ({ squares, clashes }: FilledSquares) => (squares.length > have ? 2 : clashes > 0 ? 1 : 0);
  const worse = (a: FilledSquares, b: FilledSquares) =>
    rank(a) - rank(b) || (rank(a) === 1 ? a.clashes - b.clashes : 0) || a.squares.length - b.squares.length;
  return ways.reduce((a, b) => (worse(b, a) < 0 ? b : a));
}

/** The planned squares with the groups in them. */
function assigned(
  { fits, packs, pieceOf }: SquaresPlan,
  fabricOf: (square: number) => number,
  penalty: Penalties,
): FilledSquares {
  const slots = packs.flatMap(({ pieces }, strip) =>
    pieces.map((length): Slot => ({ strip, fabric: fabricOf(strip), length })),
  );
  // What has to be alike for a group to go into a slot is which piece it is.
  const asked = fits.map((group, i) => ({ ...group, length: pieceOf[i] as number }));
  const { slots: chosen, clashes, near } = assign(asked, slots, penalty);
  const squares = packs.map((_, strip) => fits.filter((__, i) => chosen[i]?.strip === strip));
  const laid = squares.map((own, strip) => {
    const waiting = [...own];
    return laidGroups((packs[strip] as SquarePack).cut, (piece) => {
      const at = waiting.findIndex((group) => pieceOf[fits.indexOf(group)] === piece);
      return at < 0 ? undefined : waiting.splice(at, 1)[0];
    });
  });
  return { squares, laid, clashes, near };
}

/** Where the groups lie on a square that was filled one by one: each cut out in its rectangle, one after another. */
function laidAlone(groups: readonly Group[], side: Inches): readonly LaidGroup[] {
  const { pieceOf, packs } = packed(groups, { width: side, height: side }, 'broad');
  const [first] = packs;
  if (first === undefined || packs.length > 1) return [];
  const waiting = groups.map((group, i) => ({ group, piece: pieceOf[i] }));
  return laidGroups(first.cut, (kind) => {
    const at = waiting.findIndex(({ piece }) => piece === kind);
    return at < 0 ? undefined : waiting.splice(at, 1)[0]?.group;
  });
}
