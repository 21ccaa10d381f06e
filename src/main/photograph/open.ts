import type SharpModule from 'sharp';
import type { Metadata, Sharp } from 'sharp';

/** The largest picture that is decoded, pixels: twice the largest camera in common use. */
export const MOST_PIXELS = 130_000_000;

/** How long one picture may take, seconds. */
const PATIENCE = 20;

/** What sharp calls the decoders that may be used; nothing else is ever tried on a file. */
const DECODERS = ['VipsForeignLoadJpeg', 'VipsForeignLoadPng', 'VipsForeignLoadWebp', 'VipsForeignLoadTiff'];

let ready: Promise<typeof SharpModule> | null = null;

/** Loaded with the first picture: most runs of the program see none. */
function load() {
  ready ??= import('sharp').then(({ default: sharp }) => {
    sharp.block({ operation: ['VipsForeignLoad'] });
    sharp.unblock({ operation: DECODERS });
    sharp.cache(false);
    return sharp;
  });
  return ready;
}

/** A picture from the bytes of its file, to be read only as far as it is whole and of a size that can be worked with. */
export async function openPicture(bytes: Uint8Array): Promise<Sharp> {
  const sharp = await load();
  return sharp(bytes, { failOn: 'truncated', limitInputPixels: MOST_PIXELS }).timeout({ seconds: PATIENCE });
}

/** What a file says of the picture in it, before anything is decoded. Rejects when it is of no kind that is read here. */
export async function aboutPicture(bytes: Uint8Array): Promise<Metadata> {
  const sharp = await load();
  return sharp(bytes, { limitInputPixels: false }).metadata();
}
