import { useMemo } from 'react';
import { type BackingWay, WIDE } from '../../../shared/cloth/backing.ts';
import { backingFigure } from '../../../shared/diagrams/backingFigure.ts';
import type { Ink } from '../../../shared/diagrams/figure.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import { plain } from '../../../shared/measure/traced.ts';
import { setBackingWay } from '../../../shared/pattern/edits/index.ts';
import type { Pattern } from '../../../shared/pattern/schema.ts';
import type { Finishing } from '../../../shared/workroom/clothWays.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Button } from '../../parts/Button.tsx';
import { Figure } from '../../parts/figure/Figure.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Why } from '../../parts/Why.tsx';
import { useAct, useRuler } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { UseThis } from './UseThis.tsx';

interface BackingWaysProps {
  readonly pattern: Pattern;
  readonly size: WorkedSize;
  readonly ways: Finishing;
  readonly inks: readonly Ink[];
}

/** Every way to make the backing, drawn to one scale; a press chooses, in every size. */
export function BackingWays({ pattern, size, ways, inks }: BackingWaysProps) {
  const act = useAct();
  const { backing, batting } = size.cloth;
  const { run, wide = WIDE } = pattern.backing;
  const cloth = (way: BackingWay) => (way.cloth === 'wide' ? { wide } : {});
  const ruler = useRuler();
  return (
    <section className={styles.section} aria-labelledby="backing-ways">
      <h2 id="backing-ways">Backing and batting of {size.size.name}</h2>
      <p className="small">
        Both measure <Why traced={backing.width} /> × <Why traced={backing.height} />.{' '}
        {battingWords(ways, batting, ruler)}
      </p>
      <ul className={styles.ways}>
        {ways.backing.map((way) => (
          <li key={`${way.cloth} ${way.run}`} className={styles.way} data-chosen={way.chosen || undefined}>
            <BackingPicture way={way} size={size} inks={inks} />
            <div>
              <p className={styles.wayName}>{wayName(way, ruler)}</p>
              <p>
                <Why traced={way.yards} />
              </p>
              <p className={styles.under}>
                <Why traced={way.panels} /> {way.panels.value === 1 ? 'panel' : 'panels'}{' '}
                <Why traced={way.panelLength} /> long
                {way.seams === 'none' ? ', no seam' : `, seams ${way.seams}`}
              </p>
            </div>
            <UseThis
              what={`${way.cloth} cloth running ${way.run}`}
              chosen={way.chosen}
              onUse={() => act(setBackingWay, { run: way.run, ...cloth(way) })}
            />
          </li>
        ))}
      </ul>
      <div className={styles.wayFoot}>
        {pattern.backing.wide === undefined ? null : (
          <NumberField
            label="Usable width of the wide cloth"
            value={wide}
            least={60}
            most={160}
            step={1}
            onChange={(next) => act(setBackingWay, { ...(run === undefined ? {} : { run }), wide: next }, 'wide')}
          />
        )}
        {run === undefined ? (
          <p className="quiet small">Every size prints the way that takes the least cloth.</p>
        ) : (
          <Button onPress={() => act(setBackingWay, pattern.backing.wide === undefined ? {} : { wide })}>
            In every size the way that takes least
          </Button>
        )}
      </div>
    </section>
  );
}

function wayName({ cloth, run, usableWidth }: BackingWay, ruler: Ruler): string {
  const what = cloth === 'wide' ? `Wide cloth, ${ruler.length(usableWidth.value)}` : 'Cloth as for the top';
  return `${what}, running ${run}`;
}

function battingWords({ batting }: Finishing, { width, height }: WorkedSize['cloth']['batting'], ruler: Ruler): string {
  if (batting !== null) {
    return `Packaged batting of ${ruler.size(batting.width, batting.height)} is large enough.`;
  }
  const longest = ruler.length(Math.max(width.value, height.value));
  return `No packaged batting is ${longest} long: it is pieced, or bought by the ${ruler.clothUnit}.`;
}

function BackingPicture({ way, size, inks }: { way: BackingWay; size: WorkedSize; inks: readonly Ink[] }) {
  const { backing } = size.cloth;
  const { finished } = size.quilt;
  const ruler = useRuler();
  const figure = useMemo(() => {
    const drawn = { ...plain(backing), fabric: backing.fabric, seams: way.seams, panels: way.panels.value };
    return backingFigure(drawn, plain(finished), ruler.units);
  }, [backing, finished, way, ruler]);
  return (
    <div className={styles.wayPicture}>
      <Figure figure={figure} inks={inks} />
    </div>
  );
}
