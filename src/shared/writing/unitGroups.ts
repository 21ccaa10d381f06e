import { isHanded } from '../piecing/likeness.ts';
import type { Unit } from '../piecing/piecing.ts';
import type { SizedUnit, WorkedBlock, WorkedSize } from '../workroom/workedOut.ts';
import { type Desk, sizesWith } from './desk.ts';

/** One distinct unit of the pattern, in every size that takes it: equal units of several blocks are made together. */
export interface UnitGroup {
  /** The first block that has it, for its roles and its figure. */
  readonly block: WorkedBlock;
  readonly unit: Unit;
  /** Letters of the blocks that have it. */
  readonly blocks: readonly string[];
  /** The same unit in each of those blocks, by the key it has there. */
  readonly members: readonly { readonly block: string; readonly unit: string }[];
  readonly inSizes: readonly UnitInSize[];
  /** Letters of the pieces it is made of, in the order they are cut for it. */
  readonly letters: readonly string[];
}

export interface UnitInSize {
  readonly size: WorkedSize;
  readonly sized: SizedUnit;
  /** Units the whole quilt needs of it, over all its blocks. */
  readonly needed: number;
  /** How many of those are sewn as mirror images, because they go into reversed blocks and a turn does not do as well. */
  readonly reversed: number;
}

/** The units that have to be made, in the order blocks first take them; plain pieces are only cut and are left out. */
export function unitGroups(desk: Desk): readonly UnitGroup[] {
  const groups = new Map<string, UnitGroup>();
  for (const block of desk.blocks) {
    for (const unit of block.piecing.units) {
      const inSizes = sizesOf(desk, block.id, unit);
      if (!inSizes.some(({ sized }) => sized.plan.stages.length > 0)) continue;
      const key = likeness(block, unit, inSizes);
      const known = groups.get(key);
      const letters = lettersOf(desk, block.id, unit.key);
      const members = [{ block: block.id, unit: unit.key }];
      const group = { block, unit, blocks: [block.id], members, inSizes, letters };
      groups.set(key, known === undefined ? group : together(known, group));
    }
  }
  return [...groups.values()];
}

function sizesOf(desk: Desk, block: string, unit: Unit): readonly UnitInSize[] {
  const handed = isHanded(unit);
  return sizesWith(desk, block).flatMap((size) => {
    const sized = size.blocks.find(({ id }) => id === block)?.units.find((one) => one.unit.key === unit.key);
    if (sized === undefined || sized.needed === 0) return [];
    const reversed = handed ? sized.perBlock * (size.quilt.reversed[block] ?? 0) : 0;
    return [{ size, sized, needed: sized.needed, reversed }];
  });
}

/** What makes two units of different blocks the same work: kind, fabrics, and the cut sizes and method in every size. */
function likeness(block: WorkedBlock, unit: Unit, inSizes: readonly UnitInSize[]): string {
  const { key: _, width: _w, height: _h, ...shape } = unit;
  const cuts = inSizes.map(({ size, sized }) => {
    const pieces = sized.plan.cuts.map(
      (cut) => `${block.fabricOf[cut.role]} ${cut.width.value} ${cut.height.value} ${cut.count}`,
    );
    const { width, height } = sized.plan.unfinished;
    return [size.size.id, sized.method.id, width.value, height.value, ...pieces].join(' | ');
  });
  const fabrics = JSON.stringify(shape, (name, value) =>
    name === 'role' || name === 'roles' ? [value].flat().map((role: string) => block.fabricOf[role]) : value,
  );
  return `${fabrics} ${cuts.join(' || ')}`;
}

function together(a: UnitGroup, b: UnitGroup): UnitGroup {
  const inSizes = [...a.inSizes];
  for (const other of b.inSizes) {
    const at = inSizes.findIndex(({ size }) => size === other.size);
    const same = inSizes[at];
    if (same === undefined) inSizes.push(other);
    else {
      const [needed, reversed] = [same.needed + other.needed, same.reversed + other.reversed];
      inSizes[at] = { ...same, needed, reversed };
    }
  }
  const letters = [...new Set([...a.letters, ...b.letters])];
  return { ...a, blocks: [...a.blocks, ...b.blocks], members: [...a.members, ...b.members], inSizes, letters };
}

/** The chart letters of what is cut for a unit. */
export function lettersOf(desk: Desk, block: string, unit: string): readonly string[] {
  const lines = desk.sizes.flatMap(({ cloth }) => cloth.pieces);
  const its = lines.filter((line) => line.use.some((use) => use.block === block && use.unit === unit));
  return [...new Set(its.map(({ letter }) => letter))];
}
