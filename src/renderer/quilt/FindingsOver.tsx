import { Button } from 'react-aria-components';
import type { Finding } from '../../shared/measure/finding.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { Mark } from '../parts/Mark.tsx';
import { allFindings } from '../state/fit.ts';
import { useStudio, useStudioState } from '../state/hooks.tsx';
import styles from './quilt.module.css';

type Box = NonNullable<Finding['where']['box']>;

/** What does not fit, drawn where it does not; a press selects it. */
export function FindingsOver({ worked, size }: { readonly worked: WorkedOut; readonly size: WorkedSize }) {
  const studio = useStudio();
  const pointed = useStudioState((state) => state.pointed);
  const { width, height } = size.quilt.finished;
  const here = allFindings(worked).flatMap((finding) => {
    const { box, size: name, on } = finding.where;
    const drawn = box !== undefined && on === 'quilt' && name === size.size.name && finding.level !== 'note';
    return drawn ? [{ finding, box }] : [];
  });
  return here.map(({ finding, box }) => (
    <Button
      key={`${finding.where.path} ${finding.what}`}
      className={styles.misfit ?? ''}
      data-level={finding.level}
      data-pointed={pointed?.what === finding.what}
      style={placed(box, width.value, height.value)}
      onPress={() => studio.goTo(finding)}
    >
      <span className={styles.misfitWords}>
        <Mark of={finding.level} />
        {finding.what}
      </span>
    </Button>
  ));
}

function placed(box: Box, width: number, height: number) {
  const share = (part: number, whole: number) => `${(100 * part) / whole}%`;
  return {
    left: share(box.x, width),
    top: share(box.y, height),
    width: share(box.width, width),
    height: share(box.height, height),
  };
}
