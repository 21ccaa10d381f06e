import { assignLetters, type Letters } from '../cloth/letters.ts';
import type { WorkedOut } from './workedOut.ts';

/** The letter of everything that is cut, as the cutting charts of the sizes have it. */
export function lettersIn({ pattern, blocks, sizes }: Pick<WorkedOut, 'pattern' | 'blocks' | 'sizes'>): Letters {
  return assignLetters(pattern, sizes, Object.fromEntries(blocks.map((block) => [block.id, block.fabricOf])));
}
