import type { BundleAnswer } from '../../../shared/cloth/bundle/bundleFor.ts';
import { oneOf } from '../../../shared/cloth/bundle/squares.ts';
import { brokenWords, toSpare } from '../../../shared/cloth/bundle/stress.ts';
import type { Outside } from '../../../shared/cloth/bundle/wants.ts';
import { toRuler } from '../../../shared/measure/inches.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Mark } from '../../parts/Mark.tsx';
import { useRuler } from '../../state/hooks.tsx';
import styles from './bundle.module.css';
import { answerWords, fewestText, sentence, stripsText } from './words.ts';

interface EnoughProps {
  readonly worked: WorkedOut;
  readonly size: WorkedSize;
  readonly answer: BundleAnswer;
}

/** Is one bundle enough, what is to spare of each value, and what the bundle cannot give. */
export function Enough({ worked, size, answer }: EnoughProps) {
  const ruler = useRuler();
  const { oneIsEnough, allotment, fewest, wants } = answer;
  const one = oneOf(answer.bundle);
  return (
    <section className={styles.enough} aria-labelledby="is-one-enough">
      <h2 id="is-one-enough" className={styles.answer} data-enough={oneIsEnough}>
        <Mark of={oneIsEnough ? 'fits' : 'look'} /> {answerWords(answer, size.size.name)}
      </h2>
      {allotment.short.map((short) => (
        <p key={`${short.words} ${short.value}`} className={styles.short}>
          {sentence(brokenWords(short, ruler))}
        </p>
      ))}
      {fewest === null ? null : <p>The fewest strips that would do: {fewestText(fewest)}.</p>}
      <ul className={styles.values}>
        {allotment.values.map(({ value, have, forBlocks, least, forLong, spare }) => (
          <li key={value} className={styles.value}>
            <h3>{stripsText(have, value, one)}</h3>
            <p>
              {forBlocks} for the blocks{forBlocks === least ? ', fewer cannot do' : `, ${least} at the least`}
              {one === 'square' ? null : (
                <>
                  <br />
                  {forLong} whole for sets, borders and binding
                </>
              )}
            </p>
            <p className={styles.spare}>
              {spare === 0 ? `No ${one}` : spare === 1 ? `1 ${one}` : `${spare} ${one}s`} to spare
              {one === 'square'
                ? null
                : `, and ${ruler.length(toRuler(toSpare(allotment, value).ends, ruler.stepOf(1), 'down'))} in ends`}
            </p>
          </li>
        ))}
      </ul>
      <NotFromBundle worked={worked} outside={wants.outside} />
    </section>
  );
}

const WHY: Readonly<Record<Outside['why'], string>> = {
  'too wide': 'wider than a strip',
  'too long': 'longer than a strip',
  'another fabric': 'of a fabric that is not in the bundle',
};

/** Pieces that come from yardage all the same, and why. */
function NotFromBundle({ worked, outside }: { readonly worked: WorkedOut; readonly outside: readonly Outside[] }) {
  if (outside.length === 0) return null;
  const nameOf = (id: string) => worked.pattern.fabrics.find((fabric) => fabric.id === id)?.name ?? id;
  const why = [...new Set(outside.map((one) => one.why))];
  return (
    <p className="small">
      Not from the bundle:{' '}
      {why
        .map((reason) => {
          const own = outside.filter((one) => one.why === reason);
          return `${own.map(({ letter, fabric }) => `${letter} (${nameOf(fabric)})`).join(', ')}, ${WHY[reason]}`;
        })
        .join('; ')}
      . The fabric chart counts them.
    </p>
  );
}
