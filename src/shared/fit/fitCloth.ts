import type { Cloth } from '../cloth/cloth.ts';
import { tooWide } from '../cloth/planPieces.ts';
import type { Finding } from '../measure/finding.ts';
import { inchesText, sizeText } from '../measure/fraction.ts';
import type { House, Size } from '../pattern/schema.ts';

/**
 * Pieces that no width of this cloth can give in one: those wider than the usable width whichever way they lie. Borders,
 * which are joined end to end, are not among them.
 * @param path where the size stands in the document
 */
export function fitCloth(cloth: Cloth, house: House, size: Size, path: string): readonly Finding[] {
  return cloth.pieces
    .filter((line) => tooWide(line, house))
    .map((line) => {
      const piece = `${line.letter}, ${sizeText(line.width.value, line.height.value)}`;
      const by = line.height.value - house.usableWidth;
      const what = `Piece ${piece}, is wider than ${inchesText(house.usableWidth)} of cloth both ways in ${size.name}.`;
      return {
        level: 'stops',
        what,
        where: { path: `${path}.block`, size: size.name },
        by,
        mend: 'Make the block smaller, or cut the piece as two.',
      };
    });
}
