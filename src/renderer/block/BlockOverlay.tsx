import { outlinePoints } from '../../shared/drawing/curve.ts';
import type { Drawing } from '../../shared/drawing/drawing.ts';
import { turnCells } from '../../shared/pattern/edits/index.ts';
import { leavesOf } from '../../shared/piecing/tree.ts';
import { unitKindName } from '../../shared/piecing/unitNames.ts';
import { insidePlaces } from '../../shared/piecing/unitsInside.ts';
import type { Cell as Held, Recipe } from '../../shared/recipe/schema.ts';
import { readRow } from '../../shared/recipe/token.ts';
import type { WorkedBlock } from '../../shared/workroom/workedOut.ts';
import { LatticePicker } from '../parts/lattice/LatticePicker.tsx';
import type { Cell, Lattice } from '../parts/lattice/lattice.ts';
import { turnOfKey, turnWords } from '../parts/turning/turnWords.ts';
import { useAct, usePattern, useSelection } from '../state/hooks.tsx';
import styles from './block.module.css';
import { cellLattice, unitAt } from './grid.ts';
import type { ShownBlock } from './useShownBlock.ts';

interface OverlayProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  /** Finished inches of a grid unit. */
  readonly grid: number;
}

/** What lies over the block's picture: cells to pick in a grid, units to pick in any other, and what is picked. */
export function BlockOverlay(props: OverlayProps) {
  const { shown, block, grid } = props;
  const lattice = cellLattice(shown, block, grid);
  return (
    <>
      <PickedUnit {...props} />
      {lattice === null ? <UnitHits {...props} /> : <Cells {...props} lattice={lattice} />}
    </>
  );
}

function Cells({ shown, block, grid, lattice }: OverlayProps & { readonly lattice: Lattice }) {
  const [selection, select] = useSelection();
  const act = useAct();
  const { recipes } = usePattern();
  const { choice, recipe } = shown;
  const picked = selection.kind === 'cells' && selection.block === choice.id ? selection.cells : [];
  const { width, height } = block.piecing.drawing;
  const pick = (cells: readonly Cell[]) =>
    select(cells.length === 0 ? { kind: 'block', block: choice.id } : { kind: 'cells', block: choice.id, cells });
  const key = (pressed: string) => {
    const by = turnOfKey(pressed);
    if (by === null || picked.length === 0) return false;
    act(turnCells, { recipe: choice.recipe, cells: picked, by });
    return true;
  };
  return (
    <LatticePicker
      lattice={lattice}
      width={width * grid}
      height={height * grid}
      label={`Units of block ${choice.id}: arrow keys move, R turns, M mirrors`}
      describe={(cell) => cellWords(recipe, recipes, cell)}
      picked={picked}
      onPick={pick}
      onKey={key}
    />
  );
}

/** What stands in a cell, where, and how it lies, as it is spoken. */
function cellWords(recipe: ShownBlock['recipe'], recipes: readonly Recipe[], { column, row }: Cell): string {
  const place = `row ${row + 1}, column ${column + 1}`;
  if (recipe?.body.kind !== 'grid') return place;
  const entry = readRow(recipe.body.layout[row] ?? '')[column];
  if (entry === undefined || typeof entry === 'string') return place;
  const holds = recipe.body.key[entry.name];
  return [holds === undefined ? entry.name : heldWords(holds, recipes), place, turnWords(entry.turn)]
    .filter((part) => part !== '')
    .join(', ');
}

function heldWords(holds: Held, recipes: readonly Recipe[]): string {
  if ('unit' in holds) return unitKindName(holds.unit);
  return recipes.find(({ id }) => id === holds.recipe)?.name ?? holds.recipe;
}

/** A click takes the unit under it; the list of units gives the same choice to the keyboard. */
function UnitHits({ shown, block, grid }: OverlayProps) {
  const [, select] = useSelection();
  const { width } = block.piecing.drawing;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a second way to what the list of units offers
    // biome-ignore lint/a11y/useKeyWithClickEvents: as above
    <div
      className={styles.hits}
      onClick={(event) => {
        const box = event.currentTarget.getBoundingClientRect();
        const scale = (width * grid) / box.width;
        const unit = unitAt(
          { x: (event.clientX - box.left) * scale, y: (event.clientY - box.top) * scale },
          block,
          grid,
        );
        if (unit !== null) select({ kind: 'unit', block: shown.choice.id, unit });
      }}
    />
  );
}

function PickedUnit({ shown, block }: OverlayProps) {
  const [selection] = useSelection();
  const { width, height } = block.piecing.drawing;
  if (selection.kind !== 'unit' || selection.block !== shown.choice.id) return null;
  const { drawing, root } = block.piecing;
  const leaves = leavesOf(root).filter(({ unit }) => unit === selection.unit);
  // A unit inside a pieced one may lie at any slant: it is marked patch by patch.
  const inside = insidePlaces(block.piecing, selection.unit).flat();
  return (
    <svg className={styles.marked} viewBox={`0 0 ${width} ${height}`} aria-hidden="true" focusable="false">
      {leaves.map(({ box }) => (
        <g key={`${box.x} ${box.y}`}>
          <rect className={styles.under} {...box} vectorEffect="non-scaling-stroke" />
          <rect className={styles.basted} {...box} vectorEffect="non-scaling-stroke" />
        </g>
      ))}
      {inside.map((patch) => {
        const points = outlineText(drawing, patch);
        return (
          <g key={patch}>
            <polygon className={styles.under} points={points} vectorEffect="non-scaling-stroke" />
            <polygon className={styles.basted} points={points} vectorEffect="non-scaling-stroke" />
          </g>
        );
      })}
    </svg>
  );
}

function outlineText(drawing: Drawing, patch: number): string {
  const outline = drawing.patches[patch];
  if (outline === undefined) return '';
  return outlinePoints(drawing, outline)
    .map(({ x, y }) => `${x},${y}`)
    .join(' ');
}
