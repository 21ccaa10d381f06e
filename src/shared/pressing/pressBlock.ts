import { likenessIn } from '../piecing/likeness.ts';
import type { Piecing, UnitLeaf } from '../piecing/piecing.ts';
import { isMadeByItself } from '../piecing/tree.ts';
import { type Pressed, press } from './press.ts';
import { unitEdges } from './unitEdges.ts';

/** The pressing of a block: a recipe that stands in it several times is pressed the same way each time, and so made once. */
export function pressBlock({ root, units }: Piecing): Pressed {
  const likeness = likenessIn(units);
  return press<UnitLeaf>(root, unitEdges(units), (part) =>
    isMadeByItself<UnitLeaf>(part) ? likeness(part).turn : null,
  );
}
