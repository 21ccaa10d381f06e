import { oneOf } from '../../../shared/cloth/bundle/squares.ts';
import { setBundle } from '../../../shared/pattern/edits/index.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Button } from '../../parts/Button.tsx';
import { useAway } from '../../state/away/useAway.ts';
import { useAct, useRuler } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { Waiting } from '../Waiting.tsx';
import { recastName } from './words.ts';

interface RecastsProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
}

/** The same pattern for another bundle: each offer is enough for the size, and is taken as one act. */
export function Recasts({ worked, size }: RecastsProps) {
  const ruler = useRuler();
  const act = useAct();
  const asked = useAway('recasts', [worked.pattern, size.size.id]);
  const { bundle } = worked.pattern;
  const one = bundle === undefined ? 'strip' : oneOf(bundle);
  const recasts = asked.working ? null : asked.answer;
  const fabricName = (id: string) => worked.pattern.fabrics.find((fabric) => fabric.id === id)?.name ?? id;
  const sizeName = (id: string) => worked.pattern.sizes.find((one) => one.id === id)?.name ?? id;
  return (
    <section className={styles.section} aria-labelledby="other-bundles">
      <h2 id="other-bundles">Other bundles that would do for {size.size.name}</h2>
      <Waiting asked={asked} />
      {recasts?.length === 0 ? (
        <p className="quiet">
          None that is smaller or split another way. Change its counts at the side, or let fewer fabrics match.
        </p>
      ) : null}
      <ul className={styles.offers}>
        {recasts?.map((recast) => {
          const name = recastName(recast, fabricName, ruler, one);
          return (
            <li key={name} className={styles.offer}>
              <div>
                <p className={styles.wayName}>{name}</p>
                <p className={styles.under}>One is enough for {recast.enoughFor.map(sizeName).join(', ')}.</p>
              </div>
              <Button small aria-label={`Take this bundle: ${name}`} onPress={() => act(setBundle, recast.change)}>
                Take this bundle
              </Button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
