import { putCells } from '../../../shared/pattern/edits/index.ts';
import type { Corner, Cell as Held } from '../../../shared/recipe/schema.ts';
import { Choice } from '../../parts/Choice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { Stepper } from '../../parts/Stepper.tsx';
import { useAct } from '../../state/hooks.tsx';
import type { PickedCells } from './pickedCells.ts';

/** What else a unit leaves open: how many strips or squares, how large a corner or a curve is, which way a seam runs. */
export function CellNumbers({ picked }: { readonly picked: PickedCells }) {
  const act = useAct();
  const { recipe, cells, holds, token, width, height } = picked;
  if (holds === null || token === null || 'recipe' in holds) return null;
  const put = (next: Held) => act(putCells, { recipe: recipe.id, cells, holds: next, turn: token.turn });
  const most = Math.min(width, height);
  switch (holds.unit) {
    case 'rails':
      return (
        <Stepper
          label="Strips"
          value={holds.roles.length}
          least={2}
          most={12}
          onChange={(many) =>
            put({ ...holds, roles: Array.from({ length: many }, (_, i) => holds.roles[i] ?? holds.roles[i % 2] ?? '') })
          }
        />
      );
    case 'checkerboard':
      return (
        <Stepper
          label="Squares across"
          value={holds.columns}
          least={2}
          most={12}
          onChange={(columns) => {
            const rows = (columns * height) / width;
            if (Number.isInteger(rows) && rows >= 2 && rows <= 12) put({ ...holds, columns, rows });
          }}
        />
      );
    case 'quarter-circle':
      return typeof holds.radius === 'string' ? null : (
        <NumberField
          label="Radius, grid units"
          unit="plain"
          step={1 / 8}
          value={holds.radius}
          least={1 / 8}
          most={most}
          onChange={(radius) => put({ ...holds, radius })}
        />
      );
    case 'half-rectangle':
      return (
        <Choice
          label="Seam, left to right"
          value={holds.diagonal}
          options={[
            { id: 'rising', says: 'rises' },
            { id: 'falling', says: 'falls' },
          ]}
          onChange={(diagonal) => put({ ...holds, diagonal })}
        />
      );
    case 'corners':
      return <Corners holds={holds} most={most} onChange={put} />;
    default:
      return null;
  }
}

type CornersCell = Extract<Held, { unit: 'corners' }>;

const AT: readonly { readonly id: Corner; readonly name: string }[] = [
  { id: 'top-left', name: 'Top left' },
  { id: 'top-right', name: 'Top right' },
  { id: 'bottom-left', name: 'Bottom left' },
  { id: 'bottom-right', name: 'Bottom right' },
];

interface CornersProps {
  readonly holds: CornersCell;
  readonly most: number;
  readonly onChange: (next: CornersCell) => void;
}

/** How far each corner reaches along the sides; none for a corner that is not sewn on. */
function Corners({ holds, most, onChange }: CornersProps) {
  const [any] = holds.corners;
  return AT.map(({ id, name }) => {
    const corner = holds.corners.find(({ at }) => at === id);
    if (typeof corner?.size === 'string') return null;
    const rest = holds.corners.filter(({ at }) => at !== id);
    const change = (size: number) => {
      if (size === 0 && rest.length === 0) return;
      const role = corner?.role ?? any?.role ?? holds.role;
      onChange({ ...holds, corners: size === 0 ? rest : [...rest, { at: id, role, size }] });
    };
    return (
      <NumberField
        key={id}
        label={`${name} corner, grid units`}
        unit="plain"
        step={1 / 8}
        value={corner?.size ?? 0}
        least={0}
        most={most}
        onChange={change}
      />
    );
  });
}
