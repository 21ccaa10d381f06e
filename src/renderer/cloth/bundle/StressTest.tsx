import type { BundleAnswer } from '../../../shared/cloth/bundle/bundleFor.ts';
import { stress } from '../../../shared/cloth/bundle/stress.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import styles from '../cloth.module.css';
import { useAfterwards } from '../useAfterwards.ts';
import { bearsText, breaksFirst, trialName } from './words.ts';

const tried = ({ wants, bundle }: BundleAnswer) => stress(wants, bundle);

/** What happens when the bundle is not what it should be; nothing where it is not enough as it is. */
export function StressTest({ size, answer }: { readonly size: WorkedSize; readonly answer: BundleAnswer }) {
  const trials = useAfterwards(answer, tried);
  if (!answer.oneIsEnough) return null;
  const first = trials === null ? null : breaksFirst(trials);
  return (
    <section className={styles.section} aria-labelledby="what-it-bears">
      <h2 id="what-it-bears">What {size.size.name} bears</h2>
      {trials === null ? (
        <p className="quiet">Being tried…</p>
      ) : (
        <>
          {first === null ? null : (
            <p>
              <b>What breaks first:</b> {first.slice(0, 1).toLowerCase()}
              {first.slice(1)}
            </p>
          )}
          <table className={styles.chart}>
            <thead>
              <tr>
                <th scope="col">When there are</th>
                <th scope="col">It bears</th>
                <th scope="col">Then</th>
              </tr>
            </thead>
            <tbody>
              {trials.map((trial) => (
                <tr key={`${trial.what} ${trial.value}`}>
                  <th scope="row">{trialName(trial)}</th>
                  <td>{bearsText(trial)}</td>
                  <td className={styles.uses}>{trial.breaks}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
    </section>
  );
}
