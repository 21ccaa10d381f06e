import { z } from 'zod';

/** How long the longer side of a kept picture is at the most, pixels: enough for cloth seen at a hand's breadth. */
export const LARGEST_SIDE = 1024;

const pixel = z.number().int().min(0).max(LARGEST_SIDE);
const side = pixel.min(1);

/** The name a kept picture goes by: the SHA-256 of its bytes, so that the same picture has the same name everywhere. */
export const photographIdSchema = z.string().regex(/^[0-9a-f]{64}$/, 'write the 64 hexadecimal digits of its SHA-256');

/** A part of a picture, pixels from its top left corner. */
export const cropSchema = z.strictObject({ x: pixel, y: pixel, width: side, height: side });

/** A fabric's photograph: which picture, how much of it is cloth, and how large that is. The picture itself is kept elsewhere. */
export const photographSchema = z
  .strictObject({
    id: photographIdSchema.describe('Which picture: the SHA-256 of its bytes.'),
    width: side.describe('How wide the picture is, pixels.'),
    height: side.describe('How high it is.'),
    crop: cropSchema.optional().describe('The part of it that shows the cloth; left out, all of it.'),
    scale: z.number().positive().max(10).optional().describe('Inches of cloth in a pixel; left out, it is not known.'),
  })
  .refine(({ width, height, crop }) => crop === undefined || isWithin(crop, width, height), {
    path: ['crop'],
    message: 'reaches beyond the picture',
  });

/** Pictures that travel inside a file, as JPEG in base 64. */
export const carriedSchema = z.record(
  photographIdSchema,
  z
    .string()
    .max(2_000_000)
    .refine((text) => text.startsWith(JPEG_AS_TEXT), 'must begin with “data:image/jpeg;base64,”'),
);

const JPEG_AS_TEXT = 'data:image/jpeg;base64,';

export type Photograph = z.infer<typeof photographSchema>;
export type Crop = z.infer<typeof cropSchema>;

/** A picture's base 64 as it travels inside a file. */
export function carriedText(base64: string): string {
  return JPEG_AS_TEXT + base64;
}

/** The base 64 of a picture that travels inside a file. */
export function base64Of(carried: string): string {
  return carried.slice(JPEG_AS_TEXT.length);
}

/** The part of a photograph that shows cloth. */
export function cropOf({ width, height, crop }: Photograph): Crop {
  return crop ?? { x: 0, y: 0, width, height };
}

/** Inches of cloth in a pixel, from two places on a ruler in the picture and the inches between them; null for nonsense. */
export function scaleFromRuler(
  from: { readonly x: number; readonly y: number },
  to: { readonly x: number; readonly y: number },
  inches: number,
): number | null {
  const pixels = Math.hypot(to.x - from.x, to.y - from.y);
  const scale = inches / pixels;
  return pixels >= 1 && inches > 0 && scale <= 10 ? scale : null;
}

/** How much cloth a photograph shows, inches; null where its scale is not known. */
export function shownInches(photograph: Photograph): { readonly width: number; readonly height: number } | null {
  const { scale } = photograph;
  const { width, height } = cropOf(photograph);
  return scale === undefined ? null : { width: width * scale, height: height * scale };
}

/** Whether a part lies in a picture of this size. */
export function isWithin(crop: Crop, width: number, height: number): boolean {
  return crop.x + crop.width <= width && crop.y + crop.height <= height;
}
