import type { Ink } from '../../shared/diagrams/figure.ts';
import type { Step } from '../../shared/writing/book.ts';
import { Why } from '../parts/Why.tsx';
import { useCurrentSize } from '../state/hooks.tsx';
import { BookFigures } from './BookFigures.tsx';
import { BookWords } from './BookWords.tsx';
import styles from './sewing.module.css';

interface BookStepsProps {
  readonly steps: readonly Step[];
  readonly firstNumber: number;
  readonly inks: readonly Ink[];
}

/** Numbered steps, each beside its figure. */
export function BookSteps({ steps, firstNumber, inks }: BookStepsProps) {
  return (
    <ol className={styles.steps} start={firstNumber}>
      {steps.map((step, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the steps are one fixed list that is replaced whole
        <li key={i} className={styles.step}>
          <span className={styles.number} aria-hidden="true">
            {firstNumber + i}
          </span>
          <div className={styles.stepWords}>
            {step.words.map((words, j) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: as above
              <p key={j}>
                <BookWords words={words} />
              </p>
            ))}
            {step.perSize === undefined ? null : <PerSize perSize={step.perSize} />}
          </div>
          <BookFigures figures={step.figures} inks={inks} room={{ width: 380, height: 230 }} />
        </li>
      ))}
    </ol>
  );
}

function PerSize({ perSize }: { readonly perSize: NonNullable<Step['perSize']> }) {
  const current = useCurrentSize();
  return (
    <p className={styles.perSize}>
      {perSize.label}{' '}
      {perSize.values.map(({ size, value }, i) => (
        <span key={size}>
          {i === 0 ? null : ' · '}
          <span data-now={size === current?.size.name}>
            {size} <Why traced={value} />
          </span>
        </span>
      ))}
    </p>
  );
}
