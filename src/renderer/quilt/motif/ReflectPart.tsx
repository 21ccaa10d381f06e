import { setReflect } from '../../../shared/pattern/edits/index.ts';
import type { Setting } from '../../../shared/pattern/schema.ts';
import { Choice } from '../../parts/Choice.tsx';
import { useAct, usePattern } from '../../state/hooks.tsx';

type Reflect = NonNullable<Setting['reflect']>;
type Reflected = NonNullable<Setting['reflected']>;

const WAYS = [
  { id: 'no', says: 'No' },
  { id: 'across', says: 'Left' },
  { id: 'down', says: 'Up' },
  { id: 'both', says: 'Both' },
] as const;

const AS: readonly { readonly id: Reflected; readonly says: string; readonly more: string }[] = [
  { id: 'mirrored', says: 'Mirrored', more: 'Sewn as a mirror image, where a turn does not do as well.' },
  { id: 'falling', says: 'Turned, for a diagonal ╲', more: 'For blocks alike on both sides of it.' },
  { id: 'rising', says: 'Turned, for a diagonal ╱', more: 'For blocks alike on both sides of it.' },
];

/** Whether the motif is reflected about the middle of the quilt, and what its blocks then are. */
export function ReflectPart() {
  const { reflect, reflected = 'mirrored' } = usePattern().setting;
  const act = useAct();
  const set = (way: Reflect | 'no') => act(setReflect, { reflect: way === 'no' ? null : way, reflected });
  return (
    <>
      <Choice label="Reflected about the middle" value={reflect ?? 'no'} options={WAYS} onChange={set} />
      {reflect === undefined ? null : (
        <Choice
          label="A reflected block is"
          lie="list"
          value={reflected}
          options={AS}
          onChange={(as) => act(setReflect, { reflect, reflected: as })}
        />
      )}
    </>
  );
}
