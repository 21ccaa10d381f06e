import { useMemo } from 'react';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../../shared/diagrams/quiltFigure.ts';
import { lettersAt, patchesOf, whereabouts, whereFigure } from '../../../shared/diagrams/whereFigure.ts';
import { lettersIn } from '../../../shared/workroom/lettersIn.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Figure, type Picked } from '../../parts/figure/Figure.tsx';
import { Stage } from '../../parts/stage/Stage.tsx';
import { useRuler, useSelection } from '../../state/hooks.tsx';
import { WHOLE_PATTERN } from '../../state/selection.ts';
import { setUnder } from '../clothStore.ts';
import styles from './cutting.module.css';
import { ThingsOfQuilt } from './ThingsOfQuilt.tsx';
import { bindingLetters, useLit } from './useLit.ts';

interface WhereProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
}

/** The quilt beside the cloth: where the pieces go that stand out, and which pieces a patch is cut from. */
export function WhereItGoes({ worked, size }: WhereProps) {
  const lit = useLit();
  const { units } = useRuler();
  const [, select] = useSelection();
  const where = useWhereabouts(worked, size);
  const figure = useMemo(
    () =>
      quiltFigure(size.quilt, worked.blocks, {
        borders: true,
        edges: 'none',
        name: size.size.name,
        units,
      }),
    [size, worked, units],
  );
  const inks = useMemo(() => inksFor(worked.pattern.fabrics), [worked.pattern.fabrics]);
  const over = useMemo(() => {
    const binding = bindingLetters(size.cloth.pieces).some((letter) => lit.has(letter));
    const fabrics = new Map(size.cloth.pieces.map(({ letter, fabric }) => [letter, fabric]));
    return whereFigure(size.quilt, where, lit, fabrics, binding ? size.cloth.binding.fabric : null);
  }, [size, where, lit]);
  const at = (picked: Picked | null) => (picked === null ? [] : lettersAt(where, picked.at));
  const pick = (picked: Picked) => {
    const [letter] = at(picked);
    select(letter === undefined ? WHOLE_PATTERN : { kind: 'piece', letter });
  };
  return (
    <section className={styles.where} aria-label="Where the pieces go">
      <div className={styles.quilt} data-lit={lit.size > 0 || undefined}>
        <Stage figure={figure} inks={inks}>
          <div className={styles.over}>
            <Figure figure={over} inks={inks} onPick={pick} onPoint={(point) => setUnder(point && at(point))} />
          </div>
        </Stage>
      </div>
      <p className={styles.said} aria-live="polite">
        {saidOf(lit, patchesOf(where, lit))}
      </p>
      <ThingsOfQuilt worked={worked} size={size} />
    </section>
  );
}

/** Where every piece of a size goes; found once for each size that is looked at. */
function useWhereabouts(worked: WorkedOut, size: WorkedSize): ReturnType<typeof whereabouts> {
  return useMemo(() => {
    const piecings = new Map(worked.blocks.map(({ id, piecing }) => [id, piecing]));
    return whereabouts(size.quilt, { blocks: size.blocks, piecings, letters: lettersIn(worked) });
  }, [worked, size]);
}

function saidOf(lit: ReadonlySet<string>, patches: number): string {
  if (lit.size === 0) return 'Point at a piece to see where it goes, or at a patch to see what it is cut from.';
  const letters = [...lit].join(', ');
  if (patches === 0) return `Piece ${letters}`;
  return `${lit.size === 1 ? 'Piece' : 'Pieces'} ${letters}: ${patches} ${patches === 1 ? 'patch' : 'patches'} of the quilt`;
}
