import { setTriangles } from '../../../shared/pattern/edits/index.ts';
import type { OnPointSetting } from '../../../shared/pattern/schema.ts';
import { Choice } from '../../parts/Choice.tsx';
import { FabricPick } from '../../parts/FabricPick.tsx';
import { NumberField } from '../../parts/NumberField.tsx';
import { useAct, useRuler } from '../../state/hooks.tsx';
import { FabricOr } from './FabricOr.tsx';

const FITS = [
  { id: 'rounded-up', says: 'To a ruler mark', more: 'The setting ends on the next mark beyond the points.' },
  { id: 'exact', says: 'To the points', more: 'The blocks’ points touch the edge of the setting.' },
  { id: 'floating', says: 'Further out', more: 'The blocks float inside the edge.' },
] as const;

/** The triangles that fill the edges of a setting on point. */
export function OnPointFields({ setting: { triangles } }: { readonly setting: OnPointSetting }) {
  const act = useAct();
  // An inch or a centimetre from the blocks' points to the border: common practice, from memory.
  const usualFloat = useRuler().stepOf(1);
  const { fabric, corners, fit = 'rounded-up', float } = triangles;
  const setFit = (next: typeof fit) =>
    act(setTriangles, { fit: next, ...(next === 'floating' && float === undefined ? { float: usualFloat } : {}) });
  return (
    <>
      <FabricPick label="Side triangles" value={fabric} onChange={(next) => act(setTriangles, { fabric: next })} />
      <FabricOr
        label="Corner triangles"
        value={corners ?? null}
        or="As the side triangles"
        onChange={(next) => act(setTriangles, { corners: next })}
      />
      <Choice label="The triangles reach" lie="list" value={fit} options={FITS} onChange={setFit} />
      {fit === 'floating' ? (
        <NumberField
          label="Blocks float by"
          value={float ?? usualFloat}
          least={0.0625}
          most={24}
          onChange={(next) => act(setTriangles, { float: next }, 'float')}
        />
      ) : null}
    </>
  );
}
