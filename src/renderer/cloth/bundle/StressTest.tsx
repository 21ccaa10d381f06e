import type { BundleAnswer } from '../../../shared/cloth/bundle/bundleFor.ts';
import { oneOf } from '../../../shared/cloth/bundle/squares.ts';
import type { WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { useAway } from '../../state/away/useAway.ts';
import { useRuler } from '../../state/hooks.tsx';
import styles from '../cloth.module.css';
import { Waiting } from '../Waiting.tsx';
import { bearsText, breaksFirst, trialName } from './words.ts';

/** What happens when the bundle is not what it should be; nothing where it is not enough as it is. */
export function StressTest({ size, answer }: { readonly size: WorkedSize; readonly answer: BundleAnswer }) {
  const { wants, bundle, oneIsEnough } = answer;
  const ruler = useRuler();
  const asked = useAway('stress', oneIsEnough ? [wants, bundle, ruler.units] : null);
  if (!oneIsEnough) return null;
  const trials = asked.answer;
  const first = trials === null ? null : breaksFirst(trials);
  return (
    <section className={styles.section} aria-labelledby="what-it-bears">
      <h2 id="what-it-bears">What {size.size.name} bears</h2>
      <Waiting asked={asked} />
      {trials === null ? null : (
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
                  <th scope="row">{trialName(trial, oneOf(bundle))}</th>
                  <td>{bearsText(trial, ruler, oneOf(bundle))}</td>
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
