import type { Crop } from '../../shared/pattern/photograph.ts';
import { openPicture } from './open.ts';

/** Light for each of the 256 steps of a channel (IEC 61966-2-1). */
const LIGHT = Array.from({ length: 256 }, (_, step) => {
  const c = step / 255;
  return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
});

/**
 * The colour cloth has from across a room, `#rrggbb`: the mean of the light of its pixels, not of their numbers, which would
 * come out too dark.
 */
export async function meanColour(bytes: Uint8Array, crop: Crop): Promise<string> {
  const picture = await openPicture(bytes);
  const { x: left, y: top, width, height } = crop;
  const { data, info } = await picture
    .extract({ left, top, width, height })
    .toColourspace('srgb')
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const sums = [0, 0, 0];
  const { channels } = info;
  for (let i = 0; i < data.length; i += channels) {
    for (let channel = 0; channel < 3; channel += 1) {
      // A picture without colours has one channel, which stands for all three.
      const step = data[i + (channels < 3 ? 0 : channel)] ?? 0;
      sums[channel] = (sums[channel] ?? 0) + (LIGHT[step] ?? 0);
    }
  }
  const pixels = data.length / channels;
  return `#${sums.map((sum) => hex(stepOf(sum / pixels))).join('')}`;
}

function stepOf(light: number): number {
  const c = light <= 0.0031308 ? light * 12.92 : 1.055 * light ** (1 / 2.4) - 0.055;
  return Math.round(255 * Math.min(1, Math.max(0, c)));
}

function hex(step: number): string {
  return step.toString(16).padStart(2, '0');
}
