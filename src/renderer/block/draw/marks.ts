import { useMemo } from 'react';
import type { Drawing } from '../../../shared/drawing/drawing.ts';
import type { Point } from '../../../shared/drawing/turn.ts';
import type { Act } from './acts.ts';
import { useDrawState } from './drawStore.ts';
import { cornerMarks, marksFrom, marksOf, marksOnCircle, type SnapMark } from './snap.ts';

/** The marks the hand is drawn to as its act stands now. */
export function useMarks(drawing: Drawing, act: Act, places: readonly Point[]): readonly SnapMark[] {
  const finer = useDrawState((state) => state.finer);
  const stars = useDrawState((state) => state.stars);
  const still = useMemo(() => marksOf(drawing, { finer, stars }), [drawing, finer, stars]);
  return useMemo(() => marksFor(drawing, act, places, still), [drawing, act, places, still]);
}

function marksFor(
  drawing: Drawing,
  act: Act,
  places: readonly Point[],
  still: readonly SnapMark[],
): readonly SnapMark[] {
  const [first, second] = places;
  const last = places.at(-1);
  if (act === 'move') return first === undefined ? cornerMarks(drawing) : still;
  if (act === 'cut') return last === undefined ? onEdges(still) : [...still, ...marksFrom(drawing, last)];
  if (act !== 'arc' || first === undefined) return still;
  return second === undefined ? onEdges(still) : marksOnCircle(drawing, first, second);
}

function onEdges(marks: readonly SnapMark[]): readonly SnapMark[] {
  return marks.filter(({ onEdge }) => onEdge);
}
