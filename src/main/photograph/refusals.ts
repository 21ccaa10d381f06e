import { Refused } from '../refusal.ts';
import { MOST_PIXELS } from './open.ts';

const TAKEN = 'Take a JPEG, PNG, WebP or TIFF file.';

/** How files begin that people take for photographs, and what they are. */
const OTHERS: readonly (readonly [begins: RegExp, what: string, mend: string])[] = [
  [/^GIF8/, 'a GIF, which has too few colours to show cloth by', TAKEN],
  [/^%PDF/, 'a PDF', 'Save the picture itself as a JPEG.'],
  [
    /^....ftyp(heic|heix|hevc|mif1|msf1)/s,
    'a HEIC picture, as telephones keep them',
    'Save it as a JPEG and bring that.',
  ],
  [/^....ftypavi[fs]/s, 'an AVIF picture', 'Save it as a JPEG and bring that.'],
  [/^....ftyp/s, 'a film', 'Bring a still picture.'],
  [/^\s*(<\?xml|<svg|<!DOCTYPE|<html)/i, 'a page or a drawing made of text', TAKEN],
  [/^(8BPS)/, 'a painting program’s own file', 'Save it as a JPEG and bring that.'],
];

/** How the files begin that are taken. */
const PICTURES = /^(\xff\xd8\xff|\x89PNG|RIFF....WEBP|II\*\0|MM\0\*)/s;

/** Why a file is no photograph, from how it begins. */
export function notAPicture(name: string, bytes: Uint8Array): Refused {
  if (bytes.length === 0) return new Refused('bad-input', `“${name}” is empty.`);
  const begins = Buffer.from(bytes.subarray(0, 400)).toString('latin1');
  const other = OTHERS.find(([pattern]) => pattern.test(begins));
  if (other !== undefined) return new Refused('bad-input', `“${name}” is ${other[1]}. ${other[2]}`);
  if (PICTURES.test(begins)) return damaged(name);
  const what = isText(bytes) ? 'holds text, not a picture, whatever its name says' : 'is no picture that can be read';
  return new Refused('bad-input', `“${name}” ${what}. ${TAKEN}`);
}

function isText(bytes: Uint8Array): boolean {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes.subarray(0, 2000), { stream: true });
    return !text.includes('\0');
  } catch {
    return false;
  }
}

/** A file that is larger than any photograph is taken. */
export function tooManyPixels(name: string, width: number, height: number): Refused {
  const millions = (pixels: number) => Math.round(pixels / 1_000_000).toLocaleString('en');
  return new Refused(
    'bad-input',
    `“${name}” has ${width.toLocaleString('en')} × ${height.toLocaleString('en')} pixels, ${millions(width * height)} million; ` +
      `a photograph may have ${millions(MOST_PIXELS)} million. Make it smaller and bring it again.`,
  );
}

/** A picture of several frames. */
export function moving(name: string): Refused {
  return new Refused('bad-input', `“${name}” is a moving picture or has several pages. Bring a still one.`);
}

/** A picture that has hardly any cloth in it. */
export function tooSmall(name: string, least: number): Refused {
  return new Refused('bad-input', `“${name}” is smaller than ${least} × ${least} pixels: it shows no cloth.`);
}

/** What a decoder could not do, in words. */
export function undecoded(name: string, error: unknown): Refused {
  const said = error instanceof Error ? error.message : String(error);
  if (!/timeout/i.test(said)) return damaged(name);
  return new Refused('bad-input', `“${name}” takes too long to read. Make it smaller and bring it again.`);
}

function damaged(name: string): Refused {
  const words = 'is damaged or was cut short, so it cannot be read whole. Copy it again from where it came from.';
  return new Refused('bad-input', `“${name}” ${words}`);
}
