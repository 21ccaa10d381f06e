import { type KeyboardEvent, useId } from 'react';
import type { Box, Point } from '../../../shared/drawing/turn.ts';
import styles from './lattice.module.css';
import { type Cell, hasCell, sameCell } from './lattice.ts';
import type { Picking } from './picking.ts';
import { useDrawnBox } from './useDrawnBox.ts';
import type { Held } from './useHeld.ts';
import { useKeys } from './useKeys.ts';

export interface GroundPickerProps extends Picking {
  /** What this is, for those who listen: "Blocks of the quilt". */
  readonly label: string;
  /** What stands in a cell: "Block A, turned a quarter". */
  readonly describe: (cell: Cell) => string;
}

/** Lies over a picture and lets its cells be picked: by click, by drawing a box, and by the arrow keys. */
export function GroundPicker(props: GroundPickerProps) {
  const { ground, width, height, label, picked } = props;
  const id = useId();
  const { cursor, byKey, keyDown, pointerDown, setAnchor } = useKeys(props);
  const { drawn, held, forget, handlers } = useDrawnBox(props, setAnchor);
  const onKeyDown = (event: KeyboardEvent) => {
    if (held === null || event.key !== 'Escape') return keyDown(event);
    event.preventDefault();
    event.stopPropagation();
    forget();
  };
  const cellId = (cell: Cell) => `${id}-${cell.column}-${cell.row}`;
  // Only what is picked, and where the keys are, is there to be read: a large quilt has thousands of cells.
  const rows = byRow(hasCell(picked, cursor) ? picked : [...picked, cursor]);
  const chosen = new Set(picked.map(cellId));

  return (
    // biome-ignore lint/a11y/useSemanticElements: a table cannot lie over a picture with most of its cells left out
    <div
      className={styles.lattice}
      role="grid"
      tabIndex={0}
      aria-label={label}
      aria-multiselectable="true"
      aria-rowcount={ground.rows}
      aria-colcount={ground.columns}
      aria-activedescendant={cellId(cursor)}
      data-keys={byKey || undefined}
      data-brush={props.onPaint !== undefined || undefined}
      data-holding={held !== null || undefined}
      onKeyDown={onKeyDown}
      onPointerDownCapture={pointerDown}
      {...handlers}
    >
      {rows.map(([row, cells]) => (
        // biome-ignore lint/a11y/useSemanticElements: as above
        // biome-ignore lint/a11y/useFocusableInteractive: the grid holds the focus for its cells
        <div key={row} role="row" aria-rowindex={row + 1} className={styles.row}>
          {cells.map((cell) => (
            // biome-ignore lint/a11y/useSemanticElements: as above
            // biome-ignore lint/a11y/useFocusableInteractive: as above
            <div
              key={cellId(cell)}
              id={cellId(cell)}
              role="gridcell"
              aria-selected={chosen.has(cellId(cell))}
              aria-colindex={cell.column + 1}
              aria-label={props.describe(cell)}
              className={styles.cell}
              data-cursor={sameCell(cell, cursor) || undefined}
              style={lying(props, cell)}
            />
          ))}
        </div>
      ))}
      {held === null ? null : <InHand picking={props} held={held} />}
      {drawn !== null && <div className={styles.drawn} style={percent(drawn, width, height)} />}
    </div>
  );
}

/** What is in the hand, where it is now; and the cell it would change places with. */
function InHand({ picking, held: { from, by, onto } }: { readonly picking: Picking; readonly held: Held }) {
  const { ground, width, height } = picking;
  const lie = onto === null ? null : ground.lie(onto);
  return (
    <>
      {onto === null ? null : <div className={styles.onto} style={lying(picking, onto)} />}
      <div className={styles.held} style={lying(picking, from, by)} />
      {lie === null ? null : (
        <div className={styles.swap} style={percent(lie.box, width, height)}>
          <span>Swap</span>
        </div>
      )}
    </>
  );
}

const STAYS = { x: 0, y: 0 };

function lying({ ground, width, height }: Picking, cell: Cell, by: Point = STAYS) {
  const lie = ground.lie(cell);
  if (lie === null) return { display: 'none' };
  const turned = lie.tilt === undefined ? {} : { transform: `rotate(${lie.tilt}deg)` };
  return { ...percent({ ...lie.box, x: lie.box.x + by.x, y: lie.box.y + by.y }, width, height), ...turned };
}

function byRow(cells: readonly Cell[]): readonly (readonly [number, readonly Cell[]])[] {
  const rows = Map.groupBy(cells, ({ row }) => row);
  return [...rows].sort(([a], [b]) => a - b);
}

function percent(box: Box, width: number, height: number) {
  const of = (part: number, whole: number) => `${(100 * part) / whole}%`;
  return {
    left: of(box.x, width),
    top: of(box.y, height),
    width: of(box.width, width),
    height: of(box.height, height),
  };
}
