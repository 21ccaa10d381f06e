import { describe, expect, it } from 'vitest';
import { destinationOf } from '../../src/renderer/state/destination.ts';
import { fitOf, sizeLevel } from '../../src/renderer/state/fit.ts';
import type { Finding } from '../../src/shared/measure/finding.ts';
import type { WorkedOut, WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { smallPattern } from './pattern.ts';

const pattern = smallPattern();
/** The line reads only which sizes were laid out. */
const laid = pattern.sizes.map((size) => ({ size, findings: [] as readonly Finding[] }) as unknown as WorkedSize);

function worked(findings: readonly Finding[], sizes = laid): WorkedOut {
  return { pattern, blocks: [], assembly: { way: 'rows', pinned: false, why: '' }, sizes, findings };
}

const short: Finding = {
  level: 'stops',
  what: 'Outer border is ⅜″ short in Double.',
  where: { path: 'sizes[2].borders.outer', size: 'Double' },
  by: 0.375,
};

describe('the fit line', () => {
  it('says that all is well', () => {
    expect(fitOf(worked([]))).toMatchObject({ level: 'fits', words: 'Fits in all 3 sizes.' });
  });

  it('counts the sizes that fit and says what does not', () => {
    expect(fitOf(worked([short])).words).toBe('Fits in 2 of 3 sizes. Outer border is ⅜″ short in Double.');
  });

  it('puts the size in front where the sentence does not name it', () => {
    const what = 'Outer border is ⅜″ short.';
    expect(fitOf(worked([{ ...short, what }])).words).toBe('Fits in 2 of 3 sizes. Double: outer border is ⅜″ short.');
  });

  it('tells a finding once, however many stages found it', () => {
    expect(fitOf(worked([short, { ...short }])).all).toHaveLength(1);
  });

  it('a size that could not be laid out does not fit', () => {
    expect(sizeLevel(worked([], laid.slice(0, 2)), { id: 'double', name: 'Double' })).toBe('stops');
  });

  it('a second look is asked for after everything that stops', () => {
    const look: Finding = { level: 'look', what: 'Two fabrics are nearly one value.', where: { path: 'fabrics[0]' } };
    const { all, level } = fitOf(worked([look, short]));
    expect(level).toBe('stops');
    expect(all.map((finding) => finding.level)).toEqual(['stops', 'look']);
  });

  it('a note never takes the line over', () => {
    const note: Finding = { level: 'note', what: 'One strip to spare.', where: { path: 'house' } };
    expect(fitOf(worked([note]))).toMatchObject({ level: 'fits', words: 'Fits in all 3 sizes.' });
  });
});

describe('a click on the fit line goes there', () => {
  it('to the border of the size', () => {
    expect(destinationOf(short, pattern)).toEqual({
      view: 'quilt',
      size: 'double',
      selection: { kind: 'border', border: 'outer' },
    });
  });

  it.each([
    ['blocks[0].fabrics.sky', 'block', { kind: 'block', block: 'A' }],
    ['borders[0]', 'quilt', { kind: 'border', border: 'outer' }],
    ['fabrics[0].colour', 'quilt', { kind: 'fabric', fabric: 'sand' }],
    ['sizes[1]', 'quilt', { kind: 'size', size: 'lap' }],
    ['words.designer', 'pages', { kind: 'pattern' }],
    ['house.usableWidth', 'cloth', { kind: 'pattern' }],
    ['somewhere', 'quilt', { kind: 'pattern' }],
  ])('%s', (path, view, selection) => {
    expect(destinationOf({ level: 'stops', what: '', where: { path } }, pattern)).toMatchObject({ view, selection });
  });
});
