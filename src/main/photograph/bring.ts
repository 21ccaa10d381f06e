import { createHash } from 'node:crypto';
import type { Metadata } from 'sharp';
import { LARGEST_SIDE } from '../../shared/pattern/photograph.ts';
import { meanColour } from './colour.ts';
import { aboutPicture, MOST_PIXELS, openPicture } from './open.ts';
import { moving, notAPicture, tooManyPixels, tooSmall, undecoded } from './refusals.ts';

/** A picture as it is kept. */
export interface KeptPicture {
  /** The SHA-256 of its bytes. */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** JPEG. */
  readonly bytes: Uint8Array;
}

/** A picture as it is kept, and what its cloth looks like from afar. */
export interface Brought extends KeptPicture {
  /** The mean colour of all of it, `#rrggbb`. */
  readonly colour: string;
}

/** Cloth cannot be told from fewer pixels each way. */
const SMALLEST_SIDE = 8;
const QUALITY = 82;

/**
 * A photograph from the bytes of any file: checked, turned the way it was taken, made a modest size, in the colours of screens,
 * and without what the camera noted beside it. The same bytes give the same picture.
 * @param name the file's name, for refusals
 * @throws Refused when it is no photograph, with what it is instead and what to do
 */
export async function bringPhotograph(name: string, bytes: Uint8Array): Promise<Brought> {
  const { width, height, pages } = await lookedAt(name, bytes);
  if (width * height > MOST_PIXELS) throw tooManyPixels(name, width, height);
  if (Math.min(width, height) < SMALLEST_SIDE) throw tooSmall(name, SMALLEST_SIDE);
  if ((pages ?? 1) > 1) throw moving(name);
  const kept = await remade(name, bytes);
  if (Math.min(kept.width, kept.height) < SMALLEST_SIDE) throw tooSmall(name, SMALLEST_SIDE);
  const colour = await meanColour(kept.bytes, { x: 0, y: 0, width: kept.width, height: kept.height });
  return { ...kept, colour };
}

/** What the file says of itself. */
async function lookedAt(name: string, bytes: Uint8Array): Promise<Metadata> {
  try {
    return await aboutPicture(bytes);
  } catch {
    throw notAPicture(name, bytes);
  }
}

async function remade(name: string, bytes: Uint8Array): Promise<KeptPicture> {
  try {
    const picture = await openPicture(bytes);
    const { data, info } = await picture
      .autoOrient()
      .resize({ width: LARGEST_SIDE, height: LARGEST_SIDE, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .toColourspace('srgb')
      .jpeg({ quality: QUALITY, mozjpeg: false })
      .toBuffer({ resolveWithObject: true });
    return { id: idOf(data), width: info.width, height: info.height, bytes: data };
  } catch (error) {
    throw undecoded(name, error);
  }
}

/** The name a picture goes by. */
export function idOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
