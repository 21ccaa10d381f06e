import type { Inches } from '../measure/inches.ts';

/** A piece of cloth whose strips are cut at 45° to its edges. */
export interface BiasCloth {
  /** Across the cloth and along it, inches. */
  readonly width: Inches;
  readonly height: Inches;
}

/** Strips shorter than this are left over: they would put a join every hand's breadth. */
const SHORTEST = 10;

/**
 * How long the bias strips of a piece of cloth are along their middle, longest first (plain geometry). Lines at 45° across a
 * square start at its diagonal and go out both ways; across a longer piece the full ones lie between the diagonals from
 * two opposite corners. A strip's ends lie along the cloth's edges, so its middle is its shorter edge and one strip width,
 * or both edges when they are equal. A strip that runs over a corner of a longer piece counts by its shorter edge.
 * @param strip cut width of the strips, inches
 */
export function biasStrips({ width, height }: BiasCloth, strip: Inches): readonly Inches[] {
  const short = Math.min(width, height);
  const along = Math.abs(height - width);
  const apart = strip * Math.SQRT2;
  const full = Math.floor(along / apart + 1e-9);
  const rest = along - full * apart;
  const lengths = Array<number>(full).fill(short * Math.SQRT2);
  lengths.push(...outwards(short, strip, 0));
  if (rest > 1e-9) lengths.push(short * Math.SQRT2 - 2 * (strip - rest / Math.SQRT2));
  lengths.push(...outwards(short, strip, rest > 1e-9 ? strip - rest / Math.SQRT2 : 0));
  return lengths.filter((length) => length >= SHORTEST).sort((a, b) => b - a);
}

/** The strips from a corner-to-corner line out to the corner, the first of them starting so far from that line. */
function outwards(side: Inches, strip: Inches, from: Inches): readonly Inches[] {
  const diagonal = side * Math.SQRT2;
  const lengths: number[] = [];
  for (let out = from; diagonal - 2 * (out + strip) > 0; out += strip) {
    lengths.push(diagonal - 2 * (out + strip) + strip);
  }
  return lengths;
}

/**
 * How many of these strips, longest first, reach so far when joined; null when all of them do not. Their ends lie along the
 * grain at 45°, so a join takes up two seams, measured at that slant.
 */
export function stripsThatReach(strips: readonly Inches[], reach: Inches, seam: Inches): number | null {
  const lost = 2 * seam * Math.SQRT2;
  let joined = lost;
  for (const [i, length] of strips.entries()) {
    joined += length - lost;
    if (joined >= reach - 1e-9) return i + 1;
  }
  return null;
}
