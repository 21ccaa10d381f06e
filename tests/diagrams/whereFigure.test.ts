import { describe, expect, it } from 'vitest';
import { lettersAt, patchesOf, whereabouts, whereFigure } from '../../src/shared/diagrams/whereFigure.ts';
import type { Point } from '../../src/shared/drawing/turn.ts';
import { lettersIn } from '../../src/shared/workroom/lettersIn.ts';
import type { WorkedOut, WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const demo = demoPattern();
function whereIn(worked: WorkedOut, size: WorkedSize) {
  const piecings = new Map(worked.blocks.map(({ id, piecing }) => [id, piecing]));
  return whereabouts(size.quilt, { blocks: size.blocks, piecings, letters: lettersIn(worked) });
}

/** Twice the area inside an outline (the shoelace formula, Meister 1769). */
function twiceArea(outline: readonly Point[]): number {
  return Math.abs(
    outline.reduce((sum, a, i) => {
      const b = outline[(i + 1) % outline.length] as Point;
      return sum + a.x * b.y - b.x * a.y;
    }, 0),
  );
}

const worked = workOut(demo);

describe('where the pieces of the cutting chart go in the quilt', () => {
  it('gives every letter as many patches as its line of the chart says it becomes', () => {
    for (const size of worked.sizes) {
      const where = whereIn(worked, size);
      for (const { letter, use } of size.cloth.pieces) {
        const said = use.reduce((sum, { patches }) => sum + patches, 0);
        expect([size.size.id, letter, patchesOf(where, new Set([letter]))]).toEqual([size.size.id, letter, said]);
      }
    }
  });

  it('covers the finished quilt with no gap and no overlap', () => {
    for (const size of worked.sizes) {
      const { width, height } = size.quilt.finished;
      const area = whereIn(worked, size)
        .flatMap(({ outlines }) => outlines)
        .reduce((sum, outline) => sum + twiceArea(outline) / 2, 0);
      expect(area).toBeCloseTo(width.value * height.value, 6);
    }
  });

  it('tells what a spot is cut from: the border at its edge, nothing beside the quilt', () => {
    const [cot] = worked.sizes as [WorkedSize];
    const where = whereIn(worked, cot);
    const [edge] = lettersAt(where, { x: 0.5, y: 20 });
    expect(cot.cloth.pieces.find(({ letter }) => letter === edge)?.use[0]?.words).toBe('Quay border, sides');
    expect(lettersAt(where, { x: -1, y: 20 })).toEqual([]);
  });

  it('draws only what is asked for, in its own fabric, and the binding as a rim', () => {
    const [cot] = worked.sizes as [WorkedSize];
    const figure = whereFigure(cot.quilt, whereIn(worked, cot), new Set(['N']), new Map([['N', 'deep-water']]), 'tide');
    const areas = figure.marks.flatMap((mark) => (mark.kind === 'area' ? [mark] : []));
    expect(areas.map(({ fabric, outlines }) => [fabric, outlines.length])).toEqual([
      ['deep-water', 2],
      ['tide', 4],
    ]);
  });
});
