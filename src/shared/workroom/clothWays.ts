import { type BackingWay, backingWays } from '../cloth/backing.ts';
import { type BindingWays, bindingWays } from '../cloth/bindingWays.ts';
import { type Cliff, cliffsFor } from '../cloth/cliffs.ts';
import { type Cost, costOf } from '../cloth/cost.ts';
import { type KitSheet, kitSheet } from '../cloth/kit.ts';
import { assignLetters } from '../cloth/letters.ts';
import { type LongWay, longWays } from '../cloth/longWays.ts';
import { type Packaged, packagedFor } from '../cloth/packaged.ts';
import type { Inches } from '../measure/inches.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';

/** Where a narrower cloth tips over: what each fabric takes from 40 to 44 inches, everything worked out anew. */
export function cliffsIn(worked: WorkedOut, size: WorkedSize, widths?: readonly Inches[]): readonly Cliff[] {
  const { pattern } = worked;
  const fabricOf = Object.fromEntries(worked.blocks.map((block) => [block.id, block.fabricOf]));
  const letters = assignLetters(pattern, worked.sizes, fabricOf);
  return cliffsFor({ quilt: size.quilt, blocks: size.blocks, fabricOf, pattern, letters }, widths);
}

/** The other ways there are to buy and cut what finishes a quilt, beside those that are chosen. */
export interface Finishing {
  readonly backing: readonly BackingWay[];
  readonly binding: BindingWays;
  /** The package of batting that is large enough; null when it must be pieced. */
  readonly batting: Packaged | null;
  /** Borders both ways, by their letters. */
  readonly borders: readonly { readonly letter: string; readonly ways: readonly LongWay[] }[];
}

export function finishingIn({ pattern }: WorkedOut, { quilt, cloth }: WorkedSize): Finishing {
  const borderIds = new Set(pattern.borders.map(({ id }) => id));
  const borders = cloth.pieces.filter(({ use }) =>
    use.some(({ block, unit }) => block === null && borderIds.has(unit)),
  );
  return {
    backing: backingWays(quilt, pattern),
    binding: bindingWays(quilt, pattern),
    batting: packagedFor(cloth.batting),
    borders: borders.map((line) => ({ letter: line.letter, ways: longWays(line, pattern.house) })),
  };
}

/** What a size costs, from the pattern's prices; null when it gives none. */
export function costIn({ pattern }: WorkedOut, { cloth, bundle }: WorkedSize): Cost | null {
  return costOf(cloth, pattern, bundle?.bundles ?? 0);
}

/** The kit sheet of one size for so many kits. */
export function kitIn({ pattern }: WorkedOut, { cloth, bundle }: WorkedSize, kits: number): KitSheet {
  return kitSheet(cloth, pattern, kits, bundle?.bundles ?? 0);
}
