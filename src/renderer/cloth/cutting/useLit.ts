import { useMemo } from 'react';
import type { PieceLine } from '../../../shared/cloth/cloth.ts';
import { BINDING_KEY } from '../../../shared/cloth/letters.ts';
import { useCurrentSize, useSelection } from '../../state/hooks.tsx';
import type { Selection } from '../../state/selection.ts';
import { useClothState } from '../clothStore.ts';

const NONE: ReadonlySet<string> = new Set();

/** The letters that stand out: those under the pointer, or else those of what is selected. */
export function useLit(): ReadonlySet<string> {
  const under = useClothState((state) => state.under);
  const pieces = useCurrentSize()?.cloth.pieces;
  const [selection] = useSelection();
  return useMemo(() => {
    if (under !== null) return new Set(under);
    return pieces === undefined ? NONE : new Set(lettersOf(selection, pieces));
  }, [under, pieces, selection]);
}

/** The letters of what is selected: a piece by itself, a block or a border by all its pieces. */
export function lettersOf(selection: Selection, pieces: readonly PieceLine[]): readonly string[] {
  if (selection.kind === 'piece') return [selection.letter];
  if (selection.kind === 'block') return lettersFor(pieces, ({ block }) => block === selection.block);
  if (selection.kind !== 'border') return [];
  return lettersFor(pieces, ({ block, unit }) => block === null && unit === selection.border);
}

/** The letters of the pieces that have this use. */
function lettersFor(
  pieces: readonly PieceLine[],
  wanted: (use: PieceLine['use'][number]) => boolean,
): readonly string[] {
  return pieces.filter(({ use }) => use.some(wanted)).map(({ letter }) => letter);
}

/** The letters of the binding. */
export function bindingLetters(pieces: readonly PieceLine[]): readonly string[] {
  return lettersFor(pieces, ({ unit }) => unit === BINDING_KEY);
}
