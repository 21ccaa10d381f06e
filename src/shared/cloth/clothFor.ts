import type { Pattern } from '../pattern/schema.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { SizedBlock } from '../quilt/sized.ts';
import { backingNeed, battingNeed } from './backing.ts';
import { bindingLine, bindingNeed } from './binding.ts';
import { blockLines, unitCuts } from './blockPieces.ts';
import { borderLines } from './borderPieces.ts';
import { outsideBundle } from './bundle/outside.ts';
import type { Cloth, PieceLine } from './cloth.ts';
import { fabricNeeds } from './fabricNeeds.ts';
import { compareLetters, type FabricOf, type Letters } from './letters.ts';
import { settingLines } from './settingPieces.ts';
import { stripSetLines } from './stripSets.ts';
import { triangleLines } from './trianglePieces.ts';
import { uprightIn } from './upright.ts';

/** One size, ready to be cut. */
export interface ClothInput {
  readonly quilt: Quilt;
  readonly blocks: readonly SizedBlock[];
  /** Each block's roles to the pattern's fabrics. */
  readonly fabricOf: FabricOf;
  readonly pattern: Pattern;
  /** From `assignLetters` over every size. */
  readonly letters: Letters;
}

/** All the cloth for one size: what is cut, how each fabric is cut, and what is bought. Lengths are inches. */
export function clothFor(input: ClothInput): Cloth {
  const { quilt, pattern } = input;
  const binding = bindingNeed(quilt, pattern);
  const pieces = [...cutList(input), bindingLine(binding, pattern, input.letters)];
  return {
    pieces,
    needs: fabricNeeds(outsideBundle(pieces, pattern.bundle), pattern, quilt.size),
    binding,
    backing: backingNeed(quilt, pattern),
    batting: battingNeed(quilt, pattern),
  };
}

/** Blocks by letter, then what stands between them, then borders from the inside out. */
function cutList({ quilt, blocks, fabricOf, pattern, letters }: ClothInput): readonly PieceLine[] {
  const cuts = unitCuts(blocks, fabricOf, letters);
  const upright = uprightIn(pattern, quilt);
  const inBlocks = [...blockLines(cuts, upright, pattern.house.spares), ...stripSetLines(cuts, pattern.house)];
  inBlocks.sort((a, b) => compareLetters(a.letter, b.letter));
  return [
    ...inBlocks,
    ...settingLines(quilt, pattern, letters),
    ...triangleLines(quilt, letters),
    ...borderLines(quilt, pattern, letters),
  ];
}
