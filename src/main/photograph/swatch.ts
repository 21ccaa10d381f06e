import { base64Of, cropOf, type Photograph } from '../../shared/pattern/photograph.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { openPicture } from './open.ts';

/** Pixels of a printed swatch: its shape is that of the swatch on paper, at 300 to an inch. */
export const SWATCH_PIXELS = { width: 150, height: 100 };

/** How wide the cloth in a swatch is at the most, inches, where the photograph's scale is known: prints stay in proportion. */
const SWATCH_INCHES = 6;

/**
 * Small pictures of a pattern's fabrics, JPEG by fabric, from the photographs the pattern carries. A fabric without one, or
 * whose picture is not there or cannot be read, is left out: it is shown by its colour.
 */
export async function swatchPictures(pattern: Pattern): Promise<ReadonlyMap<string, Uint8Array>> {
  const made = new Map<string, Uint8Array>();
  for (const { id, photograph } of pattern.fabrics) {
    const carried = photograph === undefined ? undefined : pattern.photographs?.[photograph.id];
    if (photograph === undefined || carried === undefined) continue;
    const picture = await swatch(Buffer.from(base64Of(carried), 'base64'), photograph).catch(() => null);
    if (picture !== null) made.set(id, picture);
  }
  return made;
}

/** The middle of what the photograph shows, in the shape of a swatch. */
export async function swatch(bytes: Uint8Array, photograph: Photograph): Promise<Uint8Array> {
  const { left, top, width, height } = middleOf(photograph);
  const picture = await openPicture(bytes);
  return picture
    .extract({ left, top, width, height })
    .resize({ ...SWATCH_PIXELS, fit: 'fill' })
    .jpeg({ quality: 85 })
    .toBuffer();
}

function middleOf(photograph: Photograph) {
  const { x, y, width, height } = cropOf(photograph);
  const { scale } = photograph;
  const shape = SWATCH_PIXELS.width / SWATCH_PIXELS.height;
  const most = scale === undefined ? Number.POSITIVE_INFINITY : SWATCH_INCHES / scale;
  const across = Math.max(1, Math.min(width, Math.floor(height * shape), Math.floor(most)));
  const down = Math.max(1, Math.min(height, Math.round(across / shape)));
  const left = x + Math.floor((width - across) / 2);
  return { left, top: y + Math.floor((height - down) / 2), width: across, height: down };
}
