import type { Piecing } from '../../../shared/piecing/piecing.ts';
import { Apart } from './Apart.tsx';
import styles from './draw.module.css';
import { Seams } from './Seams.tsx';

interface FoundHeadProps {
  readonly block: string;
  readonly piecing: Piecing;
  readonly colourOf: (role: string) => string;
}

/** How a block comes apart, and how much there is to sew. */
export function FoundHead({ block, piecing, colourOf }: FoundHeadProps) {
  return (
    <div className={styles.foundHead}>
      <Apart block={block} piecing={piecing} colourOf={colourOf} />
      <Seams piecing={piecing} />
    </div>
  );
}
