/** A colour as the files write it: `#rrggbb`. */
export type Hex = string;

function channels(colour: Hex): readonly [number, number, number] {
  const value = Number.parseInt(colour.slice(1), 16);
  return [(value >> 16) & 255, (value >> 8) & 255, value & 255];
}

/** `colour` with `share` (0 to 1) of `other` mixed in, channel by channel. */
export function mixed(colour: Hex, other: Hex, share: number): Hex {
  const b = channels(other);
  const made = channels(colour).map((a, i) => Math.round(a + ((b[i] as number) - a) * share));
  return `#${made.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}

/** How light a colour looks, 0 to 1: relative luminance (IEC 61966-2-1 curve, Rec. 709 weights) taken to a third root. */
function lightness(colour: Hex): number {
  const [r, g, b] = channels(colour).map((channel) => {
    const c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return Math.cbrt(0.2126 * r + 0.7152 * g + 0.0722 * b);
}

/** Cloth so dark that a line of thread hardly shows on it. */
export function isDark(colour: Hex): boolean {
  return lightness(colour) < 0.45;
}

/** The colour of hatch lines on cloth of this colour: darker on light cloth, lighter on dark cloth. */
export function hatchColour(colour: Hex): Hex {
  return lightness(colour) > 0.55 ? mixed(colour, '#000000', 0.36) : mixed(colour, '#ffffff', 0.3);
}
