import type { AllottedStrip } from '../../../shared/cloth/bundle/allotment.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import { useRuler } from '../../state/hooks.tsx';
import { setUnder } from '../clothStore.ts';
import styles from './bundle.module.css';

interface CutStripProps {
  /** Left out for a strip that nothing is cut from. */
  readonly strip: AllottedStrip | undefined;
  /** Inches of a strip. */
  readonly length: number;
  readonly colourOf: (fabric: string) => string | undefined;
  readonly fabricOf: (letter: string) => string | undefined;
}

interface Stretch {
  readonly letter: string;
  readonly colour: string | undefined;
  readonly inches: number;
  readonly many: number;
}

/** One strip to scale: its pieces in their fabrics' colours, in the order they are cut, and what is left. */
export function CutStrip({ strip, length, colourOf, fabricOf }: CutStripProps) {
  const ruler = useRuler();
  if (strip === undefined) return <span className={styles.cut} data-whole />;
  const stretches: readonly Stretch[] = [
    ...strip.groups.flatMap(({ cuts, fabric, length: all }) => {
      const sum = cuts.reduce((total, cut) => total + cut.length * Math.ceil(cut.count), 0);
      return cuts.map((cut): Stretch => {
        const many = Math.ceil(cut.count - 1e-9);
        // Low pieces are cut in several rows, so the group takes less than its pieces laid end to end.
        const inches = sum === 0 ? 0 : (all * cut.length * many) / sum;
        return { letter: cut.letter, colour: colourOf(fabric), inches, many };
      });
    }),
    ...strip.long.map(({ letter, length: inches }): Stretch => {
      return { letter, colour: colourOf(fabricOf(letter) ?? ''), inches, many: 1 };
    }),
  ];
  return (
    <span className={styles.cut} role="img" aria-label={stretches.map((one) => stretchWords(one, ruler)).join(', ')}>
      {stretches.map(({ letter, colour, inches, many }, i) => (
        <span
          // biome-ignore lint/suspicious/noArrayIndexKey: the same letter may be cut twice from a strip
          key={`${letter} ${i}`}
          className={styles.piece}
          style={{ width: `${(100 * inches) / length}%`, background: colour }}
          onPointerEnter={() => setUnder([letter])}
          onPointerLeave={() => setUnder(null)}
        >
          <span className={styles.chip}>{many > 1 && inches > 3 ? `${many} ${letter}` : letter}</span>
        </span>
      ))}
    </span>
  );
}

function stretchWords({ letter, many, inches }: Stretch, ruler: Ruler): string {
  return many > 1 ? `${many} ${letter}` : `${letter}, ${ruler.about(inches)}`;
}
