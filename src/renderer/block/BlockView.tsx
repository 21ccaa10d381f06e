import { useCommands } from '../commands/context.ts';
import { EmptyState } from '../parts/EmptyState.tsx';
import { FindingLine } from '../parts/FindingLine.tsx';
import { usePattern, useWorked } from '../state/hooks.tsx';
import { BlockPicture } from './BlockPicture.tsx';
import { BlockSidePanel } from './BlockSidePanel.tsx';
import { BlockTabs } from './BlockTabs.tsx';
import styles from './block.module.css';
import { BLOCK_COMMANDS } from './commands.ts';
import { useOneBlock } from './draw/CutForOne.tsx';
import { DRAW_COMMANDS } from './draw/commands.ts';
import { DrawTable } from './draw/DrawTable.tsx';
import { Unread } from './draw/Unread.tsx';
import { useDrawn } from './draw/useDrawn.ts';
import { UnitList } from './UnitList.tsx';
import { type ShownBlock, useShownBlock } from './useShownBlock.ts';

/** One block of the pattern: the whole, its units, how each is made, and the recipe behind it. */
export function BlockView() {
  const shown = useShownBlock();
  const drawn = useDrawn(shown);
  useCommands(drawn === null ? BLOCK_COMMANDS : DRAW_COMMANDS);
  return (
    <div className={styles.view}>
      <BlockTabs shown={shown} />
      {drawn === null ? <Block shown={shown} /> : <DrawTable key={drawn.block} shown={shown} drawn={drawn} />}
      <BlockSidePanel shown={shown} drawn={drawn} />
    </div>
  );
}

function Block({ shown }: { readonly shown: ShownBlock }) {
  const worked = useWorked();
  const one = useOneBlock(shown, shown.worked);
  if (worked === null) return null;
  if (shown.worked === undefined) return <Undrawn shown={shown} />;
  return (
    <div className={styles.cloth}>
      <BlockPicture shown={shown} block={shown.worked} />
      {one === null ? null : <UnitList shown={shown} block={shown.worked} sized={shown.sized ?? one} one={one} />}
    </div>
  );
}

function Undrawn({ shown }: { readonly shown: ShownBlock }) {
  const pattern = usePattern();
  const findings = useWorked()?.findings ?? [];
  const at = pattern.blocks.indexOf(shown.choice);
  const recipe = pattern.recipes.findIndex(({ id }) => id === shown.choice.recipe);
  const own = findings.filter(
    ({ where }) => where.path.startsWith(`blocks[${at}]`) || where.path.startsWith(`recipes[${recipe}]`),
  );
  if (shown.recipe?.body.kind === 'drawing') return <Unread shown={shown} body={shown.recipe.body} findings={own} />;
  return (
    <EmptyState title={`Block ${shown.choice.id} cannot be drawn yet`}>
      {own.map((finding) => (
        <FindingLine key={finding.what} finding={finding} />
      ))}
    </EmptyState>
  );
}
