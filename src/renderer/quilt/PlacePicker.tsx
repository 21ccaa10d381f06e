import type { Point } from '../../shared/drawing/turn.ts';
import type { BlockLeaf, Quilt } from '../../shared/quilt/quilt.ts';
import type { WorkedOut, WorkedSize } from '../../shared/workroom/workedOut.ts';
import { GroundPicker } from '../parts/lattice/GroundPicker.tsx';
import type { Cell } from '../parts/lattice/lattice.ts';
import { turnWords } from '../parts/turning/turnWords.ts';
import { useSelection, useStudio } from '../state/hooks.tsx';
import { type Selection, WHOLE_PATTERN } from '../state/selection.ts';
import { blockIn } from './blockIn.ts';
import { paint } from './brush/paint.ts';
import { placeActs } from './placeActs.ts';
import { quiltGround } from './quiltGround.ts';
import { useQuiltState } from './quiltStore.ts';

const PICKING =
  'Blocks of the quilt: arrow keys move, Space picks one more, R turns, M mirrors, S swaps two, as drawing the picked block onto another does, L picks all alike, Delete returns to the motif';
const PAINTING = 'Blocks of the quilt: arrow keys move, Enter paints, Escape twice puts the brush down';

/** Lets the blocks of the quilt be picked, turned and mirrored; a click beside them takes the border or the setting. */
export function PlacePicker({ worked, size }: { readonly worked: WorkedOut; readonly size: WorkedSize }) {
  const { quilt } = size;
  const studio = useStudio();
  const brush = useQuiltState((state) => state.brush);
  const [selection, select] = useSelection();
  const picked = selection.kind === 'places' ? selection.places : [];
  const { onKey, swapThese } = placeActs(studio, picked);
  const swap = (a: Cell, b: Cell) => {
    swapThese(a, b);
    // What was carried stays picked where it lies now.
    select({ kind: 'places', places: [b] });
  };
  const { width, height } = quilt.finished;
  return (
    <GroundPicker
      ground={quiltGround(quilt)}
      width={width.value}
      height={height.value}
      label={brush === null ? PICKING : PAINTING}
      describe={(cell) => placeWords(blockIn(quilt, cell), cell)}
      picked={picked}
      onPick={(places) => select(places.length === 0 ? WHOLE_PATTERN : { kind: 'places', places })}
      onKey={onKey}
      onSwap={brush === null ? swap : undefined}
      onBeside={(at) => select(besideAt(quilt, at))}
      onPaint={brush === null ? undefined : (way) => paint(studio, worked, size, brush, way)}
    />
  );
}

/** What lies under a point that no block of the setting covers. */
function besideAt(quilt: Quilt, at: Point): Selection {
  const bordered = [...quilt.strips, ...quilt.blocks, ...quilt.patches].find(
    ({ border, box }) => border !== undefined && within(at, box),
  );
  if (bordered?.border !== undefined) return { kind: 'border', border: bordered.border };
  const set = [...quilt.patches, ...quilt.triangles].some(({ box }) => within(at, box));
  return set ? { kind: 'setting' } : WHOLE_PATTERN;
}

function within(at: Point, box: BlockLeaf['box']): boolean {
  return at.x >= box.x && at.y >= box.y && at.x < box.x + box.width && at.y < box.y + box.height;
}

/** What stands in a place, in words: "Block A, row 2, column 3, turned a quarter". */
function placeWords(leaf: BlockLeaf | undefined, { column, row }: Cell): string {
  const place = `row ${row + 1}, column ${column + 1}`;
  if (leaf === undefined) return place;
  return [`Block ${leaf.block}`, place, turnWords(leaf.turn)].filter((part) => part !== '').join(', ');
}
