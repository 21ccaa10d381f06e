import { FindingLine } from '../parts/FindingLine.tsx';
import { allFindings } from '../state/fit.ts';
import { useWorked } from '../state/hooks.tsx';
import styles from './block.module.css';
import type { ShownBlock } from './useShownBlock.ts';

/** What is wrong with this block, or with this block in the size looked at. */
export function BlockFindings({ shown }: { readonly shown: ShownBlock }) {
  const worked = useWorked();
  if (worked === null) return null;
  const here = allFindings(worked).filter(
    ({ where }) => where.on === shown.choice.id && (where.size === undefined || where.size === shown.size?.size.name),
  );
  if (here.length === 0) return null;
  return (
    <div className={styles.findings}>
      {here.map((finding) => (
        <FindingLine key={`${finding.where.path} ${finding.what}`} finding={finding} />
      ))}
    </div>
  );
}
