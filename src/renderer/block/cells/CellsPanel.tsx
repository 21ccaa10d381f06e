import { turnCells } from '../../../shared/pattern/edits/index.ts';
import { unitName } from '../../../shared/piecing/unitNames.ts';
import type { WorkedBlock } from '../../../shared/workroom/workedOut.ts';
import { PanelPart, SidePanel } from '../../app/SidePanel.tsx';
import { BackTo } from '../../parts/BackTo.tsx';
import type { Cell } from '../../parts/lattice/lattice.ts';
import { Rows } from '../../parts/Rows.tsx';
import { TurnActs } from '../../parts/turning/TurnActs.tsx';
import { useAct, useSelection } from '../../state/hooks.tsx';
import { useColourOf } from '../draw/useDrawn.ts';
import { cellLattice, gridInches, unitsIn } from '../grid.ts';
import type { ShownBlock } from '../useShownBlock.ts';
import { CellNumbers } from './CellNumbers.tsx';
import { CellParts } from './CellParts.tsx';
import { LinePart } from './LinePart.tsx';
import { OtherRecipe } from './OtherRecipe.tsx';
import { pickedCells } from './pickedCells.ts';
import { UnitChoices } from './UnitChoices.tsx';

interface CellsPanelProps {
  readonly shown: ShownBlock;
  readonly block: WorkedBlock;
  readonly cells: readonly Cell[];
  readonly onBack: () => void;
}

/** Cells of a grid: how they lie, what stands in them, of which fabrics, and the units that makes. */
export function CellsPanel({ shown, block, cells, onBack }: CellsPanelProps) {
  const act = useAct();
  const [, select] = useSelection();
  const grid = gridInches(shown, block);
  const lattice = cellLattice(shown, block, grid);
  const keys = lattice === null ? [] : unitsIn(cells, lattice, block, grid);
  const units = block.piecing.units.filter(({ key }) => keys.includes(key));
  const [only] = units;
  const title = units.length === 1 && only !== undefined ? unitName(only) : `${cells.length} cells`;
  const { choice, recipe } = shown;
  const picked = pickedCells(recipe, cells);
  const colourOf = useColourOf(choice);
  return (
    <SidePanel title={title} kind={`Block ${choice.id}, ${cells.length === 1 ? 'one cell' : `${cells.length} cells`}`}>
      <BackTo onPress={onBack}>Block {choice.id}</BackTo>
      <TurnActs onTurn={(by) => act(turnCells, { recipe: choice.recipe, cells, by })} />
      <p className="quiet small">
        The recipe “{recipe?.name}” changes, so every block made from it does. Cells that are not square take half
        turns.
      </p>
      {picked === null ? null : (
        <>
          <PanelPart title="What stands here">
            <UnitChoices picked={picked} fabricOf={block.fabricOf} />
          </PanelPart>
          {picked.holds === null ? null : (
            <PanelPart title="Its fabrics">
              <CellParts picked={picked} colourOf={colourOf} />
              <CellNumbers picked={picked} />
            </PanelPart>
          )}
          <PanelPart title="Another recipe here">
            <OtherRecipe picked={picked} />
          </PanelPart>
          {cells.length === 1 ? (
            <PanelPart title="Its column and row">
              <LinePart picked={picked} block={choice.id} />
            </PanelPart>
          ) : null}
        </>
      )}
      <PanelPart title={units.length === 1 ? 'Unit here' : 'Units here'}>
        <Rows
          label="Units in these cells"
          rows={units.map((unit) => ({
            id: unit.key,
            name: unitName(unit),
            end: 'how it is made',
            onPress: () => select({ kind: 'unit', block: choice.id, unit: unit.key }),
          }))}
        />
      </PanelPart>
    </SidePanel>
  );
}
