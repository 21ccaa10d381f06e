import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Point } from '../../../shared/drawing/turn.ts';
import type { Room } from '../../parts/useRoom.ts';
import { bringing, fitted, panned, type Sight, toPlace, zoomed } from './sight.ts';

/** How the drawing lies on screen, and how to look nearer or elsewhere. */
export interface Looking {
  readonly sight: Sight;
  /** Times as large as fitted. */
  readonly times: number;
  zoom(by: number, spot?: Point): void;
  pan(by: Point): void;
  whole(): void;
  /** Makes sure that a place can be seen. */
  bring(place: Point): void;
  placeAt(spot: Point): Point;
}

interface Extent {
  readonly width: number;
  readonly height: number;
}

/** @param about what the drawing is of: another one is looked at whole again */
export function useSight(room: Room, drawing: Extent, about: string): Looking {
  const { width, height } = drawing;
  const fit = useMemo(() => fitted(room, { width, height }), [room, width, height]);
  const [nearer, setNearer] = useState<Sight | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another drawing, grid or window is looked at whole
  useEffect(() => setNearer(null), [about, drawing.width, drawing.height, room.width, room.height]);
  const sight = nearer ?? fit;
  const now = useRef({ fit, room, drawing });
  now.current = { fit, room, drawing };

  const change = useCallback((next: (before: Sight) => Sight) => {
    setNearer((before) => {
      const { fit: whole } = now.current;
      const after = next(before ?? whole);
      return after.scale <= whole.scale * (1 + 1e-9) ? null : after;
    });
  }, []);
  const zoom = useCallback(
    (by: number, spot?: Point) =>
      change((before) => {
        const { fit: whole, room: place, drawing: of } = now.current;
        const about = spot ?? { x: place.width / 2, y: place.height / 2 };
        return panned(zoomed(before, by, about, whole), { x: 0, y: 0 }, place, of);
      }),
    [change],
  );
  const pan = useCallback(
    (by: Point) => change((before) => panned(before, by, now.current.room, now.current.drawing)),
    [change],
  );
  const bring = useCallback(
    (place: Point) => change((before) => bringing(before, place, now.current.room, now.current.drawing)),
    [change],
  );
  return {
    sight,
    times: sight.scale / fit.scale,
    zoom,
    pan,
    whole: () => setNearer(null),
    bring,
    placeAt: (spot) => toPlace(sight, spot),
  };
}
