import { useMemo } from 'react';
import { inksFor } from '../../../shared/diagrams/hatches.ts';
import { quiltFigure } from '../../../shared/diagrams/quiltFigure.ts';
import { unitsOn } from '../../../shared/measure/metric.ts';
import type { Size } from '../../../shared/pattern/schema.ts';
import type { FoundSize, FoundSizes } from '../../../shared/workroom/findSizes.ts';
import { laySize } from '../../../shared/workroom/workSize.ts';
import { Button } from '../../parts/Button.tsx';
import { FindingLine } from '../../parts/FindingLine.tsx';
import { Figure } from '../../parts/figure/Figure.tsx';
import { useCurrentSize, usePattern, useRuler, useWorked } from '../../state/hooks.tsx';
import styles from './finder.module.css';

interface FoundListProps {
  readonly found: FoundSizes;
  readonly onAdd: (found: FoundSize) => void;
  readonly onReplace: (found: FoundSize) => void;
}

/** The sizes found, the best first: each drawn, with what speaks for it and against it. */
export function FoundList({ found, onAdd, onReplace }: FoundListProps) {
  return (
    <div className={styles.found}>
      {found.findings.map((finding) => (
        <FindingLine key={finding.what} finding={finding} />
      ))}
      <ol className={styles.list}>
        {found.sizes.map((size, i) => (
          <li key={`${size.across} ${size.down} ${size.block} ${JSON.stringify(size.borders)}`}>
            <OneFound size={size} first={i === 0} onAdd={() => onAdd(size)} onReplace={() => onReplace(size)} />
          </li>
        ))}
      </ol>
    </div>
  );
}

interface OneFoundProps {
  readonly size: FoundSize;
  readonly first: boolean;
  readonly onAdd: () => void;
  readonly onReplace: () => void;
}

function OneFound({ size, first, onAdd, onReplace }: OneFoundProps) {
  const { sizes } = usePattern();
  const current = useCurrentSize();
  const ruler = useRuler();
  const { finished, across, down, block } = size;
  const measure = ruler.size(finished.width.value, finished.height.value);
  return (
    <article className={styles.one} aria-label={measure}>
      <Drawn found={size} />
      <div className={styles.words}>
        <h3>{measure}</h3>
        <p className="quiet small">
          {across} × {down} blocks of {ruler.length(block)}
        </p>
        <ul className={styles.reasons}>
          {size.reasons.map(({ speaks, words }) => (
            <li key={words} data-speaks={speaks}>
              <span className="heard">{speaks === 'for' ? 'For it: ' : 'Against it: '}</span>
              {words}
            </li>
          ))}
        </ul>
        <div className={styles.acts}>
          <Button
            small
            tone={first ? 'strong' : 'plain'}
            aria-label={`Add as a size: ${measure}`}
            isDisabled={sizes.length >= 12}
            onPress={onAdd}
          >
            Add as a size
          </Button>
          {current === null ? null : (
            <Button small aria-label={`In place of ${current.size.name}: ${measure}`} onPress={onReplace}>
              In place of {current.size.name}
            </Button>
          )}
        </div>
      </div>
    </article>
  );
}

function Drawn({ found }: { readonly found: FoundSize }) {
  const worked = useWorked();
  const figure = useMemo(() => {
    if (worked === null) return null;
    const { across, down, block, borders } = found;
    const size: Size = { id: 'found', name: 'Found', across, down, block, borders: { ...borders } };
    const { pattern, blocks } = worked;
    const laid = laySize({ ...pattern, sizes: [size] }, size, blocks);
    return laid.ok
      ? quiltFigure(laid.value.quilt, blocks, { borders: true, edges: 'none', units: unitsOn(pattern.house.step) })
      : null;
  }, [worked, found]);
  const inks = useMemo(() => inksFor(worked?.pattern.fabrics ?? []), [worked]);
  return (
    <div className={styles.drawn} aria-hidden="true">
      {figure === null ? null : <Figure figure={figure} inks={inks} fit="box" />}
    </div>
  );
}
