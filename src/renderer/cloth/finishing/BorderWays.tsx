import type { BorderWay } from '../../../shared/cloth/borderWays.ts';
import { setBorderCut } from '../../../shared/pattern/edits/index.ts';
import type { Finishing } from '../../../shared/workroom/clothWays.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Why } from '../../parts/Why.tsx';
import { useAct } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';

const WAYS: Readonly<Record<BorderWay['way'], string>> = {
  straight: 'Across, joined straight',
  diagonal: 'Across, joined on the diagonal',
  lengthwise: 'Along the cloth, in one piece',
};

interface BorderWaysProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly ways: Finishing;
}

/** Each border cut across the cloth or along it, with the joins and the cloth that takes; a press chooses, in every size. */
export function BorderWays({ worked, size, ways }: BorderWaysProps) {
  const act = useAct();
  const laid = ways.borders.filter((one) => one.ways.length > 0);
  if (laid.length === 0) return null;
  return (
    <section className={styles.section} aria-labelledby="border-ways">
      <h2 id="border-ways">Borders of {size.size.name}</h2>
      {laid.map(({ border: id, ways: own }) => {
        const border = worked.pattern.borders.find((one) => one.id === id);
        if (border === undefined) return null;
        const chosen = own.find((way) => way.chosen)?.way ?? 'straight';
        return (
          <div key={id} className={styles.border}>
            <h3>{border.name}</h3>
            <Choice
              label={`How ${border.name} is cut`}
              bare
              value={chosen}
              options={own.map(({ way }) => ({ id: way, says: WAYS[way] }))}
              onChange={(way) => act(setBorderCut, { border: id, way })}
            />
            <dl className={styles.facts}>
              {own.map((way) => (
                <div key={way.way} data-chosen={way.chosen || undefined}>
                  <dt>{WAYS[way.way]}</dt>
                  <dd>
                    <Why traced={way.yards} /> by itself, <Why traced={way.cloth} /> of cloth,{' '}
                    {way.joins === 0 ? 'no join' : way.joins === 1 ? '1 join' : `${way.joins} joins`}
                  </dd>
                </div>
              ))}
            </dl>
          </div>
        );
      })}
      <p className="quiet small">
        Cut along the cloth, the rest of its width is free for other pieces: the cutting plan uses it.
      </p>
    </section>
  );
}
