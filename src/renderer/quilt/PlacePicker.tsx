import type { Point } from '../../shared/drawing/turn.ts';
import type { BlockLeaf, Quilt } from '../../shared/quilt/quilt.ts';
import { LatticePicker } from '../parts/lattice/LatticePicker.tsx';
import { type Cell, evenLattice, type Lattice } from '../parts/lattice/lattice.ts';
import { turnWords } from '../parts/turning/turnWords.ts';
import { useSelection, useStudio } from '../state/hooks.tsx';
import { WHOLE_PATTERN } from '../state/selection.ts';
import { blockIn } from './blockIn.ts';
import { placeActs } from './placeActs.ts';

/** Lets the blocks of the quilt be picked, turned and mirrored; a click on a border takes the border. */
export function PlacePicker({ quilt }: { readonly quilt: Quilt }) {
  const [selection, select] = useSelection();
  const picked = selection.kind === 'places' ? selection.places : [];
  const { onKey } = placeActs(useStudio(), picked);
  const { width, height } = quilt.finished;
  const beside = (at: Point) => {
    const strip = quilt.strips.find(({ box }) => within(at, box));
    select(strip === undefined ? WHOLE_PATTERN : { kind: 'border', border: strip.border });
  };
  return (
    <LatticePicker
      lattice={latticeOf(quilt)}
      width={width.value}
      height={height.value}
      label="Blocks of the quilt: arrow keys move, R turns, M mirrors, Delete returns to the motif"
      describe={(cell) => placeWords(blockIn(quilt, cell), cell)}
      picked={picked}
      onPick={(places) => select(places.length === 0 ? WHOLE_PATTERN : { kind: 'places', places })}
      onKey={onKey}
      onBeside={beside}
    />
  );
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

function latticeOf(quilt: Quilt): Lattice {
  const origin = quilt.blocks[0]?.box ?? { x: 0, y: 0 };
  const across = 1 + Math.max(0, ...quilt.blocks.map(({ column }) => column));
  const down = 1 + Math.max(0, ...quilt.blocks.map(({ row }) => row));
  return evenLattice(origin, across, down, quilt.block.width, quilt.block.height);
}
