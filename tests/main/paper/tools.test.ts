import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { makePdf } from '../../../src/main/paper/makePdf.ts';
import { writeWhole } from '../../../src/main/paper/writeWhole.ts';
import { describeWithTool, requireTool } from '../../helpers/tools.ts';
import { richBook } from './fixtures/richBook.ts';

describeWithTool(['qpdf', 'pdffonts', 'pdfinfo'], 'the file as other programs read it', () => {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  const file = join(folder, 'book.pdf');

  beforeAll(async () => {
    await writeWhole(new Map([[file, await makePdf(richBook(), { paper: 'a4', plainInk: false, draft: false })]]));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('is sound', () => {
    expect(execFileSync(requireTool('qpdf'), ['--check', file], { encoding: 'utf8' })).toContain(
      'No syntax or stream encoding errors',
    );
  });

  it('carries its fonts, each cut down to what it uses', () => {
    const [, , ...fonts] = execFileSync(requireTool('pdffonts'), [file], { encoding: 'utf8' }).trimEnd().split('\n');
    expect(fonts.length).toBeGreaterThan(2);
    for (const font of fonts) {
      expect(font).toMatch(/^[A-Z]{6}\+Source(Sans3|Serif4)-/u);
      // Embedded, a subset, with a table back to letters.
      expect(font).toMatch(/yes +yes +yes/u);
    }
  });

  it('is tagged, PDF 1.7, and asks not to be scaled', () => {
    const said = execFileSync(requireTool('pdfinfo'), [file], { encoding: 'utf8' });
    expect(said).toMatch(/Tagged: +yes/u);
    expect(said).toMatch(/PDF version: +1\.7/u);
    expect(execFileSync(requireTool('qpdf'), ['--json', file], { encoding: 'utf8', maxBuffer: 1e9 })).toContain(
      '"/PrintScaling": "/None"',
    );
  });
});
