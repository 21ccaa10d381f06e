import { same } from '../measure/inches.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { Run } from '../quilt/sized.ts';
import type { PieceLine } from './cloth.ts';
import type { UnitCut } from './unitCut.ts';

/** Which fabrics have a print that must stand upright, and how often each block lies on its side. */
export interface Upright {
  isDirected(fabric: string): boolean;
  /** Of all the blocks with this letter, how many are turned a quarter, either way. */
  onSide(block: string): number;
}

export function uprightIn(pattern: Pick<Pattern, 'fabrics'>, quilt: Pick<Quilt, 'blocks'>): Upright {
  const directed = new Set(pattern.fabrics.filter(({ direction }) => direction !== undefined).map(({ id }) => id));
  const sides = new Map<string, number>();
  for (const { block, turn } of quilt.blocks) {
    if (turn.quarters % 2 === 1) sides.set(block, (sides.get(block) ?? 0) + 1);
  }
  return { isDirected: (fabric) => directed.has(fabric), onSide: (block) => sides.get(block) ?? 0 };
}

/** A square is cut one way whichever way it will lie: whoever sews it turns it upright. */
export function isSquare({ width, height }: Pick<PieceLine, 'width' | 'height'>): boolean {
  return same(width.value, height.value);
}

/**
 * The same cuts, as far as their long side stands (`lengthwise`) or lies across in the quilt: units and blocks that are turned
 * a quarter have theirs the other way.
 */
export function lyingIn(cuts: readonly UnitCut[], lengthwise: boolean, upright: Upright): readonly UnitCut[] {
  return cuts
    .map((of) => {
      const { sized, cut, block } = of;
      const stands = cut.height.value > cut.width.value;
      const turned = turnedOf(of, upright.onSide(block));
      const needed = stands === lengthwise ? sized.needed - turned : turned;
      return { ...of, sized: { ...sized, needed, runs: shared(sized.runs, needed / sized.needed) } };
    })
    .filter(({ sized }) => sized.needed > 0);
}

/** A part of every run; batches are whole, so the parts may come to a batch more than the whole. */
function shared(runs: readonly Run[], part: number): readonly Run[] {
  return runs.map((run) => ({ ...run, needed: Math.ceil(run.needed * part - 1e-9), before: 0 }));
}

/** Of the units of a cut, how many lie on their side in the quilt. */
function turnedOf({ sized }: UnitCut, onSide: number): number {
  const { perBlock, perBlockOnSide, needed } = sized;
  const upright = perBlock === 0 ? 0 : needed / perBlock - onSide;
  return upright * perBlockOnSide + onSide * (perBlock - perBlockOnSide);
}
