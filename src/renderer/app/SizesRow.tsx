import { useEffect, useRef, useState } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { Mark, markWord } from '../parts/Mark.tsx';
import { Stitch } from '../parts/Stitch.tsx';
import { sizeLevel } from '../state/fit.ts';
import { useCompare, useCurrentSize, useRuler, useStudio, useWorked } from '../state/hooks.tsx';
import styles from './SizesRow.module.css';
import { SmallQuilt } from './SmallQuilt.tsx';

const ALL = '*';

/** The sizes as small drawn quilts, all to one scale, standing on the fit line. */
export function SizesRow() {
  const worked = useWorked();
  const current = useCurrentSize();
  const compare = useCompare();
  const studio = useStudio();
  const row = useRef<HTMLElement>(null);
  const shown = compare ? ALL : (current?.size.id ?? ALL);
  // Many sizes are wider than the window: the one looked at is brought into it.
  useEffect(() => {
    const chosen = row.current?.querySelector(`[data-size="${CSS.escape(shown)}"]`);
    chosen?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [shown]);
  const choose = (key: unknown) => (key === ALL ? studio.compareSizes(true) : studio.chooseSize(String(key)));
  return (
    <section ref={row} id="sizes" className={styles.row} aria-label="Sizes" tabIndex={-1}>
      {worked === null ? null : (
        <ToggleButtonGroup
          className={styles.group ?? ''}
          aria-label="Size looked at"
          disallowEmptySelection
          selectedKeys={[shown]}
          onSelectionChange={(keys) => choose([...keys][0])}
        >
          <Sizes worked={worked} />
          {worked.sizes.length > 1 ? (
            <ToggleButton id={ALL} data-size={ALL} className={styles.all ?? ''}>
              All sizes
            </ToggleButton>
          ) : null}
        </ToggleButtonGroup>
      )}
    </section>
  );
}

/** How tall the tallest quilt stands: an eighth of the window, within reason. */
function standingHeight(): number {
  return Math.round(Math.min(180, Math.max(64, window.innerHeight * 0.115)));
}

function useStandingHeight(): number {
  const [height, setHeight] = useState(standingHeight);
  useEffect(() => {
    const measure = () => setHeight(standingHeight());
    window.addEventListener('resize', measure);
    return () => window.removeEventListener('resize', measure);
  }, []);
  return height;
}

function Sizes({ worked }: { readonly worked: WorkedOut }) {
  const standing = useStandingHeight();
  const ruler = useRuler();
  const tallest = Math.max(1, ...worked.sizes.map(({ quilt }) => quilt.finished.height.value));
  return worked.sizes.map((sized) => {
    const { size, quilt } = sized;
    const level = sizeLevel(worked, size);
    const { width, height } = quilt.finished;
    return (
      <ToggleButton key={size.id} id={size.id} data-size={size.id} className={styles.size ?? ''}>
        <SmallQuilt worked={worked} sized={sized} fit={standing / tallest} />
        <span className={styles.words}>
          <span className={styles.name}>{size.name}</span>
          <span className={styles.thread}>
            <Stitch />
          </span>
          <span className={styles.finished}>{ruler.size(width.value, height.value)}</span>
          <span className={styles.fit}>
            <Mark of={level} />
            {markWord(level)}
          </span>
        </span>
      </ToggleButton>
    );
  });
}
