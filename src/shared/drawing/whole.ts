import type { Arc, Drawing, Patch } from './drawing.ts';
import { type Point, type Turn, turnPoint, turnSize } from './turn.ts';

/** The drawing turned or mirrored; every patch runs clockwise again. */
export function turnDrawing(drawing: Drawing, turn: Turn): Drawing {
  const { width, height } = drawing;
  const move = (point: Point) => turnPoint(point, turn, width, height);
  const patches = turn.mirrored
    ? drawing.patches.map((patch): Patch => ({ ...patch, outline: [...patch.outline].reverse() }))
    : drawing.patches;
  const turned = { ...drawing, ...turnSize(width, height, turn), points: drawing.points.map(move), patches };
  if (drawing.arcs === undefined) return turned;
  return { ...turned, arcs: drawing.arcs.map((arc): Arc => ({ ...arc, centre: move(arc.centre) })) };
}

/** The same drawing on a grid `times` as fine. */
export function refineGrid(drawing: Drawing, times: number): Drawing {
  if (!(Number.isInteger(times) && times > 0))
    throw new RangeError(`A grid is refined a whole number of times, not ${times}`);
  return scaled(drawing, times);
}

function scaled(drawing: Drawing, times: number): Drawing {
  const larger = ({ x, y }: Point): Point => ({ x: x * times, y: y * times });
  const all = {
    ...drawing,
    width: drawing.width * times,
    height: drawing.height * times,
    points: drawing.points.map(larger),
  };
  if (drawing.arcs === undefined) return all;
  return { ...all, arcs: drawing.arcs.map((arc) => ({ ...arc, centre: larger(arc.centre) })) };
}

/**
 * The same drawing on another grid: as many units across and down, its shape kept. Corners may then lie between the grid's
 * lines.
 * @throws RangeError when the new grid has another shape
 */
export function regrid(drawing: Drawing, width: number, height: number): Drawing {
  const times = width / drawing.width;
  if (Math.abs(drawing.height * times - height) > 1e-9 * height)
    throw new RangeError(
      `A drawing of ${drawing.width} by ${drawing.height} does not fit a grid of ${width} by ${height}`,
    );
  return { ...scaled(drawing, times), width, height };
}

/** One patch given another role. */
export function setRole(drawing: Drawing, patch: number, role: string): Drawing {
  if (drawing.patches[patch]?.role === role) return drawing;
  return { ...drawing, patches: drawing.patches.map((one, i) => (i === patch ? { ...one, role } : one)) };
}

/** A patch and all that hang together with it in the same role, given another role. */
export function floodRole(drawing: Drawing, patch: number, role: string): Drawing {
  const was = drawing.patches[patch]?.role;
  if (was === undefined || was === role) return drawing;
  const beside = neighboursOf(drawing);
  const flooded = new Set([patch]);
  for (const one of flooded) {
    for (const next of beside[one] ?? []) if (drawing.patches[next]?.role === was) flooded.add(next);
  }
  return { ...drawing, patches: drawing.patches.map((one, i) => (flooded.has(i) ? { ...one, role } : one)) };
}

/** For each patch, the patches that share an edge with it. */
export function neighboursOf(drawing: Drawing): readonly (readonly number[])[] {
  const owner = new Map<string, number>();
  drawing.patches.forEach(({ outline }, index) => {
    outline.forEach((a, i) => {
      owner.set(`${a}>${outline[(i + 1) % outline.length]}`, index);
    });
  });
  return drawing.patches.map(({ outline }) => {
    const others = outline.flatMap((a, i) => owner.get(`${outline[(i + 1) % outline.length]}>${a}`) ?? []);
    return [...new Set(others)];
  });
}
