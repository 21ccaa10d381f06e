import { type BackingWay, backingWays } from '../cloth/backing.ts';
import { bindingWays } from '../cloth/bindingWays.ts';
import { type BorderWay, borderWays } from '../cloth/borderWays.ts';
import { type Cliff, cliffsFor } from '../cloth/cliffs.ts';
import type { BindingNeed } from '../cloth/cloth.ts';
import { type Cost, costOf } from '../cloth/cost.ts';
import { type KitSheet, kitSheet } from '../cloth/kit.ts';
import { type Packaged, packagedFor } from '../cloth/packaged.ts';
import type { Inches } from '../measure/inches.ts';
import { lettersIn } from './lettersIn.ts';
import type { WorkedOut, WorkedSize } from './workedOut.ts';

/** Where a narrower cloth tips over: what each fabric takes from 40 to 44 inches, everything worked out anew. */
export function cliffsIn(worked: WorkedOut, size: WorkedSize, widths?: readonly Inches[]): readonly Cliff[] {
  const { pattern } = worked;
  const fabricOf = Object.fromEntries(worked.blocks.map((block) => [block.id, block.fabricOf]));
  const letters = lettersIn(worked);
  return cliffsFor({ quilt: size.quilt, blocks: size.blocks, fabricOf, pattern, letters }, widths);
}

/** The other ways there are to buy and cut what finishes a quilt, beside those that are chosen. */
export interface Finishing {
  readonly backing: readonly BackingWay[];
  readonly binding: readonly BindingNeed[];
  /** The package of batting that is large enough; null when it must be pieced. */
  readonly batting: Packaged | null;
  /** Every border by its id: across the cloth, joined straight or on the diagonal, and along it in one piece. */
  readonly borders: readonly { readonly border: string; readonly ways: readonly BorderWay[] }[];
}

export function finishingIn({ pattern }: WorkedOut, { quilt, cloth }: WorkedSize): Finishing {
  return {
    backing: backingWays(quilt, pattern),
    binding: bindingWays(quilt, pattern),
    batting: packagedFor(cloth.batting),
    borders: pattern.borders.map((border) => ({ border: border.id, ways: borderWays(quilt, border, pattern) })),
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
