import { describe, expect, test } from 'vitest';
import { seemsOther } from '../../src/shared/pattern/seems.ts';

/** A file of bytes as it comes when it is read as text, as browsers do (UTF-8, what is none becomes U+FFFD). */
const bytes = (...of: readonly number[]) => new TextDecoder().decode(new Uint8Array(of));

// How these files begin: PDF 32000-1 7.5.2; PNG (W3C) 5.2; JFIF 1.02; GIF89a; ZIP appnote 4.3.7; SVG 2; from memory.
describe('a file that is neither a recipe nor a pattern is called what it seems to be', () => {
  test.each([
    ['%PDF-1.7\n%âãÏÓ', /a PDF\.$/],
    [bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d), /a picture \(PNG\)/],
    [bytes(0xff, 0xd8, 0xff, 0xe0, 0, 0x10, 0x4a, 0x46, 0x49, 0x46, 0), /a photograph \(JPEG\)/],
    ['GIF89a', /a picture \(GIF\)/],
    [bytes(0x50, 0x4b, 0x03, 0x04, 0x14, 0), /a packed folder/],
    ['<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 4 4"><path d="M0 0h4v4H0z"/></svg>', /a drawing in SVG/],
    ['<?xml version="1.0"?>\n<!-- star -->\n<svg width="4in">', /a drawing in SVG/],
    ['<!doctype html>\n<title>Star</title>', /a web page/],
    ['<?xml version="1.0"?><quilt/>', /an XML file/],
    ['0\nSECTION\n2\nHEADER', /a drawing in DXF/],
    ['block,width\nstar,9\nsail,12\n', /a table \(CSV\)/],
    ['Cut 40 squares.', /plain text/],
    ['[1, 2]', /a list in JSON, with no recipe in it/],
    ['{ "format": "piecewright-motif", "version": 1 }', /a motif for settings/],
    ['{ "format": "something-else" }', /another program: it calls itself “something-else”/],
    ['{ "name": "star", "shapes": [] }', /JSON of another program/],
    ['{ "roles": [], "body": {} }', /a recipe without its first line/],
    ['{ "blocks": [], "sizes": [] }', /a pattern without its first line/],
  ])('%j', (text, words) => {
    const found = seemsOther(text);
    expect(found?.what).toMatch(/^This is neither a recipe nor a pattern; it seems to be /);
    expect(found?.what).toMatch(words);
    expect(found?.mend).toBeDefined();
  });

  test('an empty file and JSON with a slip in it are told by reading them', () => {
    expect(seemsOther('')).toBeNull();
    expect(seemsOther('{ "format": "piecewright-recipe", }')).toBeNull();
  });
});
