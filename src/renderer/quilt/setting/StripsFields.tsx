import { setShift, setStrips } from '../../../shared/pattern/edits/index.ts';
import type { StripsSetting } from '../../../shared/pattern/schema.ts';
import { Choice } from '../../parts/Choice.tsx';
import { Pick } from '../../parts/Pick.tsx';
import { useAct } from '../../state/hooks.tsx';
import { FabricOr } from './FabricOr.tsx';

const NOT = 'none';

/** Each further strip begins so much further on; the halves and thirds that are used come first. */
const SHIFTS = [
  { id: NOT, name: 'Not at all' },
  { id: '1/2', name: '½ of a block' },
  { id: '1/3', name: '⅓ of a block' },
  { id: '2/3', name: '⅔ of a block' },
  { id: '1/4', name: '¼ of a block' },
  { id: '3/4', name: '¾ of a block' },
  { id: '1/5', name: '⅕ of a block' },
  { id: '2/5', name: '⅖ of a block' },
  { id: '3/5', name: '⅗ of a block' },
  { id: '4/5', name: '⅘ of a block' },
  { id: '1/6', name: '⅙ of a block' },
  { id: '5/6', name: '⅚ of a block' },
] as const;

/** Which way strips run, how far each is shifted, and what stands at their ends. */
export function StripsFields({ setting }: { readonly setting: StripsSetting }) {
  const act = useAct();
  const { run, shift, fill } = setting;
  return (
    <>
      <Choice
        label="The strips are"
        value={run}
        options={[
          { id: 'columns', says: 'Columns' },
          { id: 'rows', says: 'Rows' },
        ]}
        onChange={(next) => act(setStrips, { run: next })}
      />
      <Pick
        label="Each is shifted by"
        value={shift ?? NOT}
        options={SHIFTS}
        onChange={(next) => act(setShift, { shift: next === NOT ? null : next })}
      />
      {shift === undefined ? null : (
        <FabricOr
          label="At the ends of shifted strips"
          value={fill ?? null}
          or="Blocks that are cut off"
          onChange={(next) => act(setShift, { shift, fill: next })}
        />
      )}
    </>
  );
}
