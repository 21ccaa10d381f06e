import { createHash } from 'node:crypto';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { bringPhotograph } from '../../../src/main/photograph/bring.ts';
import { meanColour } from '../../../src/main/photograph/colour.ts';
import { SWATCH_PIXELS, swatch } from '../../../src/main/photograph/swatch.ts';
import { Refused } from '../../../src/main/refusal.ts';
import { busy, halves, plain } from './pictures.ts';

async function wordsFor(name: string, bytes: Uint8Array): Promise<string> {
  try {
    await bringPhotograph(name, bytes);
  } catch (error) {
    if (error instanceof Refused) return error.words;
    throw error;
  }
  throw new Error('it was taken');
}

/** How far two colours are apart in their most different channel. */
function apart(a: string, b: string): number {
  return Math.max(...[1, 3, 5].map((at) => Math.abs(channel(a, at) - channel(b, at))));
}
const channel = (colour: string, at: number) => Number.parseInt(colour.slice(at, at + 2), 16);

describe('a photograph that is brought in', () => {
  it('becomes a modest picture of the same shape, named by its bytes', async () => {
    const brought = await bringPhotograph('cloth.png', await plain(4000, 3000).png().toBuffer());
    expect(brought).toMatchObject({ width: 1024, height: 768 });
    expect(apart(brought.colour, '#336699')).toBeLessThanOrEqual(1);
    // Source: FIPS 180-4, by Node's own hash.
    expect(brought.id).toBe(createHash('sha256').update(brought.bytes).digest('hex'));
    expect((await sharp(brought.bytes).metadata()).format).toBe('jpeg');
  });

  it('is not made larger', async () => {
    const brought = await bringPhotograph('small.jpg', await plain(300, 200).jpeg().toBuffer());
    expect(brought).toMatchObject({ width: 300, height: 200 });
  });

  it('lies the way it was taken', async () => {
    // Orientation 6 of the Exif standard (CIPA DC-008): the camera was turned; the picture's left becomes its top.
    const taken = await halves(400, 200, '#cc2200', '#0022cc').jpeg().withMetadata({ orientation: 6 }).toBuffer();
    const { width, height, bytes } = await bringPhotograph('turned.jpg', taken);
    expect({ width, height }).toEqual({ width: 200, height: 400 });
    expect(apart(await meanColour(bytes, { x: 0, y: 0, width: 200, height: 190 }), '#cc2200')).toBeLessThan(6);
    expect(apart(await meanColour(bytes, { x: 0, y: 210, width: 200, height: 190 }), '#0022cc')).toBeLessThan(6);
  });

  it('says nothing of where and when it was taken', async () => {
    const exif = {
      IFD0: { Copyright: 'Saltmarsh & Thread' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '50/1 0/1 0/1' },
    };
    const { bytes } = await bringPhotograph('away.jpg', await plain(64, 64).jpeg().withExif(exif).toBuffer());
    const { exif: left, icc, xmp } = await sharp(bytes).metadata();
    expect([left, icc, xmp]).toEqual([undefined, undefined, undefined]);
  });

  it.each([
    ['CMYK', () => plain(90, 60, '#808080').toColourspace('cmyk').jpeg().toBuffer(), 20],
    ['grey', () => plain(90, 60, '#808080').toColourspace('b-w').jpeg().toBuffer(), 1],
    ['sixteen bits', () => plain(90, 60, '#808080').toColourspace('rgb16').png().toBuffer(), 1],
    ['WebP', () => plain(90, 60, '#808080').webp().toBuffer(), 2],
    ['TIFF', () => plain(90, 60, '#808080').tiff().toBuffer(), 1],
  ])('may be %s', async (_name, make, near) => {
    const { colour } = await bringPhotograph('cloth', await make());
    expect(apart(colour, '#808080')).toBeLessThanOrEqual(near);
  });

  it('is white where it is transparent', async () => {
    const clear = sharp({ create: { width: 40, height: 40, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } });
    expect((await bringPhotograph('clear.png', await clear.png().toBuffer())).colour).toBe('#ffffff');
  });

  it('may have sixty megapixels, and other work goes on meanwhile', async () => {
    const large = await plain(9000, 6700).toColourspace('b-w').jpeg().toBuffer();
    let longest = 0;
    let last = performance.now();
    const watch = setInterval(() => {
      longest = Math.max(longest, performance.now() - last);
      last = performance.now();
    }, 5);
    const brought = await bringPhotograph('large.jpg', large);
    clearInterval(watch);
    expect(brought).toMatchObject({ width: 1024, height: 762 });
    // A machine under load is slow; one that does nothing else for the whole of it would be seconds.
    expect(longest).toBeLessThan(1000);
  });
});

describe('a file that is no photograph', () => {
  it.each([
    [
      'swatch.jpg',
      Buffer.from('Cut 12 squares of each fabric.\n'),
      'holds text, not a picture, whatever its name says',
    ],
    ['swatch.jpg', Buffer.alloc(0), 'is empty'],
    ['swatch.jpg', Buffer.from([0, 1, 2, 3, 255, 254, 0, 9]), 'is no picture that can be read'],
    ['swatch.svg', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>'), 'made of text'],
    ['pages.pdf', Buffer.from('%PDF-1.7\n'), 'a PDF'],
    ['phone.heic', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0'), 'HEIC'],
    ['small.gif', Buffer.from('GIF89a\x01\0\x01\0'), 'a GIF'],
  ])('%s: %j is told as “… %s”', async (name, bytes, words) => {
    const told = await wordsFor(name, bytes);
    expect(told).toContain(words);
    expect(told).toContain(`“${name}”`);
  });

  it.each([
    ['JPEG', () => busy(400, 300).jpeg().toBuffer()],
    ['PNG', () => busy(400, 300).png().toBuffer()],
    ['WebP', () => busy(400, 300).webp().toBuffer()],
    ['TIFF', () => busy(400, 300).tiff().toBuffer()],
  ])('is told when it is a %s that was cut short', async (_name, make) => {
    const whole = await make();
    expect(await wordsFor('cut', whole.subarray(0, whole.length >> 1))).toContain('was cut short');
  });

  it('is told by its size when it has too many pixels, before any is looked at', async () => {
    const bytes = Buffer.from(await plain(20, 20).png().toBuffer());
    // Width and height in the PNG's first chunk (W3C PNG, 11.2.2); its checksum no longer fits, which nobody may mind first.
    bytes.writeUInt32BE(90_000, 16);
    bytes.writeUInt32BE(90_000, 20);
    const told = await wordsFor('huge.png', bytes);
    expect(told).toMatch(/8,100 million|was cut short/);
  });

  it('is told when it moves', async () => {
    const frames = await busy(60, 120).raw().toBuffer();
    const moving = await sharp(frames, { raw: { width: 60, height: 120, channels: 3, pageHeight: 60 } })
      .webp()
      .toBuffer();
    expect(await wordsFor('moving.webp', moving)).toContain('moving');
  });

  it('is told when it shows no cloth', async () => {
    expect(await wordsFor('dot.png', await plain(4, 4).png().toBuffer())).toContain('smaller than 8 × 8');
    expect(await wordsFor('thread.png', await plain(4000, 9).png().toBuffer())).toContain('smaller than 8 × 8');
  });
});

describe('the colour of cloth', () => {
  it('is the mean of its light', async () => {
    const { bytes } = await bringPhotograph('check.png', await halves(800, 400, '#000000', '#ffffff').png().toBuffer());
    // IEC 61966-2-1: half of the light is 188 of 255.
    expect(apart(await meanColour(bytes, { x: 0, y: 0, width: 800, height: 400 }), '#bcbcbc')).toBeLessThanOrEqual(1);
    expect(await meanColour(bytes, { x: 600, y: 0, width: 200, height: 400 })).toBe('#ffffff');
  });
});

describe('a printed swatch', () => {
  it('is the middle of the part that shows the cloth', async () => {
    const { bytes, id, width, height } = await bringPhotograph(
      'cloth.png',
      await halves(800, 400, '#cc2200', '#0022cc').png().toBuffer(),
    );
    const crop = { x: 420, y: 10, width: 300, height: 300 };
    const made = await swatch(bytes, { id, width, height, crop });
    expect(await sharp(made).metadata()).toMatchObject({ format: 'jpeg', ...SWATCH_PIXELS });
    expect(apart(await meanColour(made, { x: 0, y: 0, ...SWATCH_PIXELS }), '#0022cc')).toBeLessThan(4);
  });
});
