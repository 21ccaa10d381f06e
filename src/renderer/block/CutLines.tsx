import { same } from '../../shared/measure/inches.ts';
import type { Traced } from '../../shared/measure/traced.ts';
import type { Cut } from '../../shared/piecing/method.ts';
import { FabricSwatch } from '../parts/FabricSwatch.tsx';
import { Why } from '../parts/Why.tsx';
import { usePattern } from '../state/hooks.tsx';
import styles from './block.module.css';

interface CutLinesProps {
  readonly cuts: readonly Cut[];
  readonly fabricOf: Readonly<Record<string, string>>;
  /** How many in all, one for each cut; left out, how many for one batch. */
  readonly counts?: readonly Traced[];
}

/** What is cut, one line for each size: how many, which cloth, how large. */
export function CutLines({ cuts, fabricOf, counts }: CutLinesProps) {
  const { fabrics } = usePattern();
  return (
    <ul className={styles.cutLines}>
      {cuts.map((cut, i) => {
        const fabric = fabrics.find(({ id }) => id === fabricOf[cut.role]);
        const many = counts?.[i];
        return (
          <li
            key={`${cut.use} ${cut.role} ${cut.width.value} ${cut.height.value} ${cut.stripSet ?? ''}`}
            className={styles.cutLine}
          >
            <span className={styles.many}>{many === undefined ? cut.count : <Why traced={many} />}</span>
            {fabric === undefined ? null : <FabricSwatch colour={fabric.colour} name={fabric.name} bare />}
            <span>
              <CutWords cut={cut} />
              {fabric === undefined ? null : <span className="heard">, {fabric.name}</span>}
            </span>
          </li>
        );
      })}
    </ul>
  );
}

/** A strip by its width and sub-cut, a square by one measure, anything else by both. */
function CutWords({ cut }: { readonly cut: Cut }) {
  const { width, height, use, stripSet } = cut;
  if (stripSet !== undefined) {
    return (
      <>
        <Why traced={width} /> <span className="quiet">{use}, sub-cut</span> <Why traced={height} />
      </>
    );
  }
  const square = same(width.value, height.value) && use.includes('square');
  return (
    <>
      <Why traced={width} />
      {square ? null : (
        <>
          {' × '}
          <Why traced={height} />
        </>
      )}{' '}
      <span className="quiet">{use}</span>
    </>
  );
}
