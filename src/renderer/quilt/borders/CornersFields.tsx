import { setBorderCorners, setBorderEnds } from '../../../shared/pattern/edits/index.ts';
import type { Border } from '../../../shared/pattern/schema.ts';
import { Choice } from '../../parts/Choice.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { useAct } from '../../state/hooks.tsx';
import { FabricOr } from '../setting/FabricOr.tsx';

const CORNERS = [
  { id: 'butted', says: 'Butted' },
  { id: 'cornerstones', says: 'Squares' },
  { id: 'mitred', says: 'Mitred' },
] as const;

/** How a plain border's strips meet, and whether its top and bottom are of another width. */
export function CornersFields({ border }: { readonly border: Border }) {
  const act = useAct();
  const { id, corners = 'butted', cornerstones, ends, width } = border;
  return (
    <>
      <Choice
        label="Corners"
        value={corners}
        options={CORNERS}
        onChange={(next) => act(setBorderCorners, { border: id, corners: next })}
      />
      {corners === 'cornerstones' ? (
        <FabricOr
          label="Squares in the corners"
          value={cornerstones ?? null}
          or="As the border"
          onChange={(fabric) =>
            // Taken off and put on again, the squares are the border's own.
            fabric === null
              ? act(setBorderCorners, { border: id, corners, cornerstones: border.fabric })
              : act(setBorderCorners, { border: id, corners, cornerstones: fabric })
          }
        />
      ) : null}
      <Choice
        label="Top and bottom"
        value={ends === undefined ? 'same' : 'own'}
        options={[
          { id: 'same', says: 'As wide' },
          { id: 'own', says: 'Another width' },
        ]}
        onChange={(next) => act(setBorderEnds, { border: id, ends: next === 'same' ? null : width })}
      />
      {ends === undefined ? null : (
        <NumberField
          label="Finished width, top and bottom"
          value={ends}
          least={0.0625}
          most={60}
          onChange={(next) => act(setBorderEnds, { border: id, ends: next }, `ends ${id}`)}
        />
      )}
      {corners === 'mitred' && ends !== undefined && ends !== width ? (
        <p className="quiet small">Strips of two widths cannot be mitred: they are butted.</p>
      ) : null}
    </>
  );
}
