import sharp from 'sharp';

/** One colour all over. */
export function plain(width: number, height: number, background = '#336699') {
  return sharp({ create: { width, height, channels: 3, background } });
}

/** The left half of one colour, the right half of another. */
export function halves(width: number, height: number, left: string, right: string) {
  const half = { create: { width: width / 2, height, channels: 3 as const, background: left } };
  return plain(width, height, right).composite([{ input: half, left: 0, top: 0 }]);
}

/** A picture with something everywhere, so that half of its file is half of it. */
export function busy(width: number, height: number) {
  const pixels = Buffer.alloc(width * height * 3);
  for (let i = 0; i < pixels.length; i += 1) pixels[i] = (i * i * 31 + (i >> 5) * 17) % 251;
  return sharp(pixels, { raw: { width, height, channels: 3 } });
}
