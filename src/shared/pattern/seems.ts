import type { Finding } from '../measure/finding.ts';
import { isRecord, parse, stops } from './reading.ts';

/** How files of other kinds begin; what cannot be read as text has lost its first bytes on the way here. */
const BEGINNINGS: readonly (readonly [begins: RegExp, words: string, mend?: string])[] = [
  [/^%PDF-/, 'a PDF', 'A printed pattern cannot be read back: bring in the file it was made from.'],
  [/^[\s\S]{0,1}PNG\r?\n/, 'a picture (PNG)'],
  [/^[\s\S]{0,12}(JFIF|Exif)/, 'a photograph (JPEG)'],
  [/^GIF8[79]a/, 'a picture (GIF)'],
  [/^RIFF[\s\S]{4,8}WEBP/, 'a picture (WebP)'],
  [/^PK[^\w\s]{2}/, 'a packed folder (ZIP) or a document of an office program'],
  [/^SQLite format 3/, 'a database'],
  [/^\s*(<\?xml[^>]*>\s*)?(<!--[\s\S]*?-->\s*)*(<!DOCTYPE svg[^>]*>\s*)?<svg[\s>]/i, 'a drawing in SVG', redraw()],
  [/^\s*(<!--[\s\S]*?-->\s*)*<(!doctype html|html)[\s>]/i, 'a web page'],
  [/^\s*<[?!a-z]/i, 'an XML file'],
  [/^\s*(0\r?\nSECTION|999\r?\n)/, 'a drawing in DXF', redraw()],
];

function redraw(): string {
  return 'Lines alone do not say how a block is sewn: draw it on the drawing table, with “Draw a new block”.';
}

const MEND = 'Recipes and patterns are files whose names end in .recipe.json and .pattern.json.';

/** Formats of ours that are neither. */
const OURS: Readonly<Record<string, string>> = {
  'piecewright-motif': 'a motif for settings',
  'piecewright-mattresses': 'a table of mattresses',
};

/**
 * What a file seems to be that is neither a recipe nor a pattern, as a finding that says so.
 * @returns null for a file that means to be one of them, or is JSON with a slip in it: reading it tells what is wrong
 */
export function seemsOther(text: string): Finding | null {
  const bare = text.replace(/^\uFEFF/, '');
  if (bare.trim() === '') return null;
  const known = BEGINNINGS.find(([begins]) => begins.test(bare.slice(0, 2000)));
  if (known !== undefined) return said(known[1], known[2]);
  if (/^\s*[[{]/.test(bare)) return seemsJson(bare);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: a text has none of them
  if (/[\u0000-\u0008\uFFFD]/.test(bare.slice(0, 2000))) return said('a file of another program');
  return isTable(bare) ? said('a table (CSV)') : said('plain text');
}

function seemsJson(text: string): Finding | null {
  const parsed = parse(text);
  if (!parsed.ok) return null;
  const { value } = parsed;
  if (Array.isArray(value)) return said('a list in JSON, with no recipe in it');
  if (!isRecord(value)) return null;
  const { format } = value;
  if (typeof format === 'string')
    return said(OURS[format] ?? `a file of another program: it calls itself “${format.slice(0, 80)}”`);
  if ('roles' in value && 'body' in value)
    return said('a recipe without its first line', 'Write "format": "piecewright-recipe" and "version": 1 into it.');
  if ('blocks' in value && 'sizes' in value)
    return said('a pattern without its first line', 'Write "format": "piecewright-pattern" and its version into it.');
  if ('properties' in value && 'type' in value) return said('a schema, which says how files are written');
  return said('JSON of another program');
}

function isTable(text: string): boolean {
  const lines = text.split(/\r?\n/, 4).filter((line) => line !== '');
  const many = lines.map((line) => line.split(/[,;\t]/).length);
  return lines.length > 1 && (many[0] ?? 0) > 1 && many.every((count) => count === many[0]);
}

function said(words: string, mend = MEND): Finding {
  return { ...stops(`This is neither a recipe nor a pattern; it seems to be ${words}.`, ''), mend };
}
