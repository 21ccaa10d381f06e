import { useCommands } from '../commands/context.ts';
import { useCompare, useCurrentSize, useWorked } from '../state/hooks.tsx';
import { BrushStrip } from './brush/BrushStrip.tsx';
import { CompareSizes } from './CompareSizes.tsx';
import { QUILT_COMMANDS } from './commands.ts';
import { Finder } from './finder/Finder.tsx';
import { QuiltHead } from './QuiltHead.tsx';
import { QuiltPicture } from './QuiltPicture.tsx';
import { QuiltSidePanel } from './QuiltSidePanel.tsx';
import styles from './quilt.module.css';
import { useQuiltState } from './quiltStore.ts';
import { Unlaid, useUnlaid } from './Unlaid.tsx';

/** The quilt as large as can be, and everything that can be chosen about it. */
export function QuiltView() {
  useCommands(QUILT_COMMANDS);
  return (
    <div className={styles.view}>
      <QuiltHead />
      <BrushStrip />
      <Cloth />
      <QuiltSidePanel />
      <Finder />
    </div>
  );
}

function Cloth() {
  const over = useQuiltState((state) => state.over);
  const worked = useWorked();
  const size = useCurrentSize();
  const compare = useCompare();
  const unlaid = useUnlaid();
  if (worked === null) return null;
  if (compare) return <CompareSizes worked={worked} over={over} />;
  if (size === null || unlaid !== null) return <Unlaid size={unlaid} />;
  return <QuiltPicture worked={worked} size={size} over={over} />;
}
