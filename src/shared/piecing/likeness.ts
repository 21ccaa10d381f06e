import { ALL_TURNS, afterTurn, type Box, type Turn, turnBox, undoTurn } from '../drawing/turn.ts';
import { distinct } from './distinct.ts';
import type { BlockPart, Unit, UnitKey, UnitLeaf } from './piecing.ts';
import { leavesOf } from './tree.ts';

/** What a part of a block is, however it lies. */
export interface Likeness {
  /** Equal for parts that are the same turned; apart for those only a mirror would make the same. */
  readonly key: string;
  /** How this part lies, seen from the way all of its likeness are compared in. */
  readonly turn: Turn;
}

/** Knows parts of one block that are the same thing turned, so that they are made once and made alike. */
export function likenessIn(units: readonly Unit[]): (part: BlockPart) => Likeness {
  const known = new Map(units.map((unit) => [unit.key, unit]));
  return (part) => {
    const ways = ALL_TURNS.filter((turn) => !turn.mirrored).map((turn) => ({
      key: describe(part, turn, known),
      turn: undoTurn(turn),
    }));
    return ways.reduce((first, way) => (way.key < first.key ? way : first));
  };
}

/**
 * The quarter turn that makes a block its own mirror image, left to right; null when only a mirror does, for then it has
 * to be sewn the other way round.
 */
export function mirrorTurn(part: BlockPart, units: readonly Unit[]): Turn | null {
  const known = new Map(units.map((unit) => [unit.key, unit]));
  const image = describe(part, { quarters: 0, mirrored: true }, known);
  return ALL_TURNS.find((turn) => !turn.mirrored && describe(part, turn, known) === image) ?? null;
}

/** Whether the mirror image of a unit is another unit, which has to be made the other way round. */
export function isHanded(unit: Unit): boolean {
  const box = { x: 0, y: 0, width: unit.width, height: unit.height };
  const image = distinct({ kind: 'unit', shape: unit, turn: { quarters: 0, mirrored: true }, box, patches: [] });
  return image.unit.key !== unit.key;
}

/** The leaves of a part turned, each by its unit, place and lie, in reading order. */
function describe(part: BlockPart, turn: Turn, units: ReadonlyMap<UnitKey, Unit>): string {
  const { box } = part;
  const leaves = leavesOf<UnitLeaf>(part).map((leaf) => {
    const place: Box = { ...leaf.box, x: leaf.box.x - box.x, y: leaf.box.y - box.y };
    const { x, y } = turnBox(place, turn, box.width, box.height);
    const unit = units.get(leaf.unit);
    if (unit === undefined) throw new RangeError(`The block has no unit “${leaf.unit}”`);
    const lying = distinct({ ...leaf, shape: unit, turn: afterTurn(leaf.turn, turn) }).leaf;
    return `${y} ${x} ${lying.unit} ${lying.turn.quarters}${lying.turn.mirrored ? 'm' : ''}`;
  });
  return leaves.sort().join(' | ');
}
