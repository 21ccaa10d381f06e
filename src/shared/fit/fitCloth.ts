import type { Cloth } from '../cloth/cloth.ts';
import { acrossOf, tooWide } from '../cloth/planPieces.ts';
import type { Finding } from '../measure/finding.ts';
import { rulerOn } from '../measure/ruler.ts';
import type { House, Pattern, Size } from '../pattern/schema.ts';

/**
 * What cannot be cut as it is said. Pieces that no width of this cloth can give in one: those wider than the usable width however they may lie. Borders,
 * which are joined end to end, are not among them. And kept plans whose proof does not hold.
 * @param path where the size stands in the document
 */
export function fitCloth(cloth: Cloth, pattern: Pattern, size: Size, path: string): readonly Finding[] {
  return [...tooWideFindings(cloth, pattern.house, size, path), ...disprovedFindings(cloth, pattern, size)];
}

/** Plans that came with the pattern and claim to be shorter than can be. */
function disprovedFindings({ needs }: Cloth, { fabrics, plans = [] }: Pattern, size: Size): readonly Finding[] {
  return needs
    .filter(({ plan }) => plan.disproved)
    .map(({ fabric }) => {
      const name = fabrics.find(({ id }) => id === fabric)?.name ?? fabric;
      const at = plans.findIndex((plan) => plan.size === size.id && plan.fabric === fabric);
      return {
        level: 'look',
        what: `The proof kept for cutting ${name} in ${size.name} is not true: a shorter plan is known than it says there can be. The usual plan is taken.`,
        where: { path: `plans[${at}]`, size: size.name },
        mend: 'Have it proven again in the cloth view.',
      };
    });
}

function tooWideFindings(cloth: Cloth, house: House, size: Size, path: string): readonly Finding[] {
  const ruler = rulerOn(house.step);
  return cloth.pieces
    .filter((line) => tooWide(line, house))
    .map((line) => {
      const piece = `${line.letter}, ${ruler.size(line.width.value, line.height.value)}`;
      const across = acrossOf(line);
      const turned = across > line.height.value;
      const ways = turned ? 'as its print stands' : 'both ways';
      const what = `Piece ${piece}, is wider than ${ruler.length(house.usableWidth)} of cloth ${ways} in ${size.name}.`;
      return {
        level: 'stops',
        what,
        where: { path: `${path}.block`, size: size.name },
        by: across - house.usableWidth,
        mend: `Make the block smaller, or cut the piece as two${turned ? ', or take a print that may be turned' : ''}.`,
      };
    });
}
