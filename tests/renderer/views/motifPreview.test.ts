import { expect, test } from 'vitest';
import { blocksFor, darkHalf, templateFigure } from '../../../src/renderer/quilt/motif/preview.ts';
import { freshPattern } from '../../../src/shared/pattern/fresh.ts';
import { workOut } from '../../../src/shared/workroom/workOut.ts';
import { motifTemplates } from '../../helpers/motifs.ts';
import { demoPattern, starter } from '../../helpers/starters.ts';

const fresh = { id: 'breakwater', title: 'Breakwater', designer: 'Harbour', date: '2026-01-01' };

test('a log cabin shows where its dark half lies, and every classic setting of one block can be drawn with it', () => {
  const pattern = freshPattern(starter('log-cabin'), [], fresh);
  const worked = workOut(pattern);
  const [block] = worked.blocks;
  const [size] = pattern.sizes;
  if (block === undefined || size === undefined) throw new Error('not worked out');
  expect(darkHalf(block, pattern.fabrics)).not.toBeNull();
  for (const template of motifTemplates()) {
    const letters = blocksFor(template, pattern, 'A');
    expect(letters === null).toBe(template.blocks > 1);
    if (letters !== null)
      expect(templateFigure(pattern, worked.blocks, size, template, letters, 'bottom-left')).not.toBeNull();
  }
});

test('a star is dark on no side, and a setting of two blocks begins with the chosen one', () => {
  const pattern = demoPattern();
  const [block] = workOut(pattern).blocks;
  if (block === undefined) throw new Error('not worked out');
  expect(darkHalf(block, pattern.fabrics)).toBeNull();
  const checkerboard = motifTemplates().find(({ id }) => id === 'checkerboard');
  if (checkerboard === undefined) throw new Error('no checkerboard');
  expect(blocksFor(checkerboard, pattern, 'B')).toEqual(['B', 'A']);
});
