/** Lightness below which a fabric reads as dark, and from which as light; between them as medium (CIE L*, common practice: thirds). */
export const DARK_BELOW = 42;
export const LIGHT_FROM = 66;

/**
 * CIE 1976 lightness L* (0 black … 100 white) of a colour written #rrggbb, taken as sRGB (IEC 61966-2-1) and seen in
 * daylight D65: L* = 116 ∛Y − 16, and 903.3 Y near black.
 */
export function lightnessOf(colour: string): number {
  const value = Number.parseInt(colour.slice(1), 16);
  const [r, g, b] = [(value >> 16) & 255, (value >> 8) & 255, value & 255].map(linear) as [number, number, number];
  const y = 0.2126729 * r + 0.7151522 * g + 0.072175 * b;
  return y > 216 / 24389 ? 116 * Math.cbrt(y) - 16 : (24389 / 27) * y;
}

function linear(channel: number): number {
  const c = channel / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
}

/** The grey of the same lightness, as #rrggbb: what a fabric looks like without its colour. */
export function greyOf(colour: string): string {
  const l = lightnessOf(colour);
  const y = l > 8 ? ((l + 16) / 116) ** 3 : (l * 27) / 24389;
  const c = y <= 0.0031308 ? 12.92 * y : 1.055 * y ** (1 / 2.4) - 0.055;
  const channel = Math.round(Math.min(1, Math.max(0, c)) * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${channel}${channel}${channel}`;
}
