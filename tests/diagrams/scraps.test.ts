import { describe, expect, test } from 'vitest';
import type { Area } from '../../src/shared/diagrams/figure.ts';
import { inksFor } from '../../src/shared/diagrams/hatches.ts';
import { quiltFigure } from '../../src/shared/diagrams/quiltFigure.ts';
import { quiltRowsFigure } from '../../src/shared/diagrams/quiltRowsFigure.ts';
import { scrapCounts, scrapsIn } from '../../src/shared/diagrams/scraps.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import type { WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const demo = demoPattern();
const names = ['Slip', 'Groyne', 'Jetty', 'Mole', 'Lock', 'Staithe', 'Hard'];
const scraps = names.map((name, i) => ({ name, colour: `#2f41${(70 + i).toString(16)}` }));

function scrappy(spread?: number): Pattern {
  const [first, ...rest] = demo.fabrics;
  const fabric = { ...(first as Pattern['fabrics'][0]), scraps, ...(spread === undefined ? {} : { spread }) };
  return { ...demo, fabrics: [fabric, ...rest] };
}

const id = demo.fabrics[0]?.id ?? '';
const outlinesOf = (areas: readonly Area[]) => areas.reduce((sum, { outlines }) => sum + outlines.length, 0);

function areasIn(figure: ReturnType<typeof quiltFigure>): readonly Area[] {
  return figure.marks.filter((mark): mark is Area => mark.kind === 'area');
}

/** The edges of an outline, the same whichever way round. */
function edgesOf(outline: Area['outlines'][number]): readonly string[] {
  const names = outline.map(({ x, y }) => `${x.toFixed(3)},${y.toFixed(3)}`);
  return names.map((name, i) => [name, names[(i + 1) % names.length]].sort().join(' '));
}

describe('a scrappy fabric', () => {
  const worked = workOut(scrappy());
  const lap = worked.sizes[1] as WorkedSize;
  const plainLap = workOut(demo).sizes[1] as WorkedSize;

  test('is drawn in its scraps, patch for patch, in every figure of the quilt', () => {
    for (const draw of [
      (size: WorkedSize) => quiltFigure(size.quilt, worked.blocks, { borders: true }),
      (size: WorkedSize) => quiltRowsFigure(size.quilt, worked.blocks),
    ]) {
      const plain = areasIn(draw(plainLap)).filter(({ fabric }) => fabric === id);
      const areas = areasIn(draw(lap)).filter(({ fabric }) => fabric?.startsWith(`${id}~`));
      expect(areasIn(draw(lap)).filter(({ fabric }) => fabric === id)).toEqual([]);
      expect(outlinesOf(areas)).toBe(outlinesOf(plain));
      expect(new Set(areas.map(({ fabric }) => fabric)).size).toBe(names.length);
    }
  });

  test('has an ink for each scrap, in its colour', () => {
    const inks = inksFor(worked.pattern.fabrics).filter(({ fabric }) => fabric.startsWith(`${id}~`));
    expect(inks.map(({ colour }) => colour)).toEqual(scraps.map(({ colour }) => colour));
  });

  test('counts every patch once, and no scrap much more than another', () => {
    const counts = scrapCounts(scrapsIn(lap.quilt, worked.blocks), id, names.length);
    const all = areasIn(quiltFigure(lap.quilt, worked.blocks, { borders: true })).filter(({ fabric }) =>
      fabric?.startsWith(`${id}~`),
    );
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(outlinesOf(all));
    expect(Math.max(...counts) - Math.min(...counts)).toBeLessThan(Math.max(...counts) / 2);
  });

  test('never touches itself along an edge: there are scraps enough', () => {
    const areas = areasIn(quiltFigure(lap.quilt, worked.blocks, { borders: true }));
    for (const { outlines } of areas.filter(({ fabric }) => fabric?.startsWith(`${id}~`))) {
      const edges = outlines.flatMap(edgesOf);
      expect(new Set(edges).size).toBe(edges.length);
    }
  });

  test('is spread the same way for the same number, and otherwise for another', () => {
    const spreadOf = (pattern: Pattern) => {
      const { sizes, blocks } = workOut(pattern);
      return [...(scrapsIn((sizes[0] as WorkedSize).quilt, blocks)?.get(id) ?? [])];
    };
    expect(spreadOf(scrappy(3))).toEqual(spreadOf(scrappy(3)));
    expect(spreadOf(scrappy(3))).not.toEqual(spreadOf(scrappy(4)));
  });
});
