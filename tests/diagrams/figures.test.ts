import { describe, expect, it } from 'vitest';
import { blockFigure } from '../../src/shared/diagrams/blockFigure.ts';
import { blockStepFigures } from '../../src/shared/diagrams/blockSteps.ts';
import { borderFigure, borderIds } from '../../src/shared/diagrams/borderFigure.ts';
import { cuttingFigure } from '../../src/shared/diagrams/cuttingFigure.ts';
import type { Area, Arrow, Figure, Letter } from '../../src/shared/diagrams/figure.ts';
import { inARow } from '../../src/shared/diagrams/inARow.ts';
import { quiltFigure } from '../../src/shared/diagrams/quiltFigure.ts';
import { quiltLayoutFigure } from '../../src/shared/diagrams/quiltLayoutFigure.ts';
import { quiltRowsFigure } from '../../src/shared/diagrams/quiltRowsFigure.ts';
import { sceneFigure } from '../../src/shared/diagrams/sceneFigure.ts';
import { unitFigure } from '../../src/shared/diagrams/unitFigure.ts';
import { doubleArea } from '../../src/shared/drawing/drawing.ts';
import { ALL_TURNS, turnPoint } from '../../src/shared/drawing/turn.ts';
import { everyFigure } from './everyFigure.ts';
import { fixture } from './fixture.ts';
import { HST_SEWN } from './scenes.ts';

const own = fixture();
const [beacon, hearth] = own.blocks as readonly [(typeof own.blocks)[number], (typeof own.blocks)[number]];

const areas = ({ marks }: Figure) => marks.filter((mark): mark is Area => mark.kind === 'area');
const arrows = ({ marks }: Figure) => marks.filter((mark): mark is Arrow => mark.kind === 'arrow');
const letters = ({ marks }: Figure) => marks.filter((mark): mark is Letter => mark.kind === 'letter');
const clothOf = (figure: Figure) =>
  areas(figure)
    .flatMap((area) => area.outlines)
    .reduce((sum, outline) => sum + Math.abs(doubleArea(outline)) / 2, 0);
const wayOf = ({ from, to }: Arrow) => {
  if (Math.abs(to.x - from.x) > Math.abs(to.y - from.y)) return to.x > from.x ? 'right' : 'left';
  return to.y > from.y ? 'down' : 'up';
};

describe('every figure', () => {
  it.each(everyFigure(own))('keeps its marks inside its frame: $name', ({ figure }) => {
    const spots = figure.marks.flatMap((mark) => {
      if (mark.kind === 'area') return mark.outlines.flat();
      if (mark.kind === 'line') return mark.points;
      return mark.kind === 'arrow' ? [mark.from, mark.to] : [mark.at];
    });
    for (const { x, y } of spots) {
      expect(x).toBeGreaterThan(-1e-9);
      expect(y).toBeGreaterThan(-1e-9);
      expect(x).toBeLessThan(figure.width + 1e-9);
      expect(y).toBeLessThan(figure.height + 1e-9);
    }
    expect(figure.alt).toMatch(/^[A-Z0-9].*\.$/s);
  });
});

describe('the whole quilt', () => {
  // Four by five blocks of 8″ with borders of 1½″ and 4″: 32 + 11 by 40 + 11 inches.
  const figure = quiltFigure(own.quilt, own.blocks, { borders: true });

  it('is as large as the finished quilt and covered once', () => {
    expect([figure.width, figure.height]).toEqual([43, 51]);
    expect(clothOf(figure)).toBeCloseTo(43 * 51, 6);
  });

  it('has one area for each fabric', () => {
    expect(
      areas(figure)
        .map((area) => area.fabric)
        .sort(),
    ).toEqual(['deep', 'foam', 'lamp', 'night', 'sand', 'tide']);
  });

  it('has every patch of every block and every border strip', () => {
    const patches = own.quilt.blocks.length / 2;
    const count = patches * beacon.piecing.drawing.patches.length + patches * hearth.piecing.drawing.patches.length + 8;
    expect(areas(figure).flatMap((area) => area.outlines)).toHaveLength(count);
  });

  it('turns blocks the way the layout says', () => {
    const turned = own.quilt.blocks.find((leaf) => leaf.block === 'B' && leaf.turn.quarters === 1);
    if (turned === undefined) throw new Error('The fixture has no such block');
    const { x, y } = turned.box;
    // The last log is dark and on top; a quarter turn clockwise brings it to the right side.
    const dark = areas(figure).find((area) => area.fabric === 'deep')?.outlines ?? [];
    const log = dark.find((outline) => outline.every((p) => p.x >= x + 7 && p.x <= x + 8 && p.y >= y && p.y <= y + 8));
    expect(Math.abs(doubleArea(log ?? [])) / 2).toBe(8);
  });

  it('shows in its layout where the top of every block lies', () => {
    const layout = quiltLayoutFigure(own.quilt, own.blocks);
    const ways = own.quilt.blocks.map(({ turn }) => ['up', 'right', 'down', 'left'][turn.quarters]);
    expect(arrows(layout).map(wayOf)).toEqual(ways);
    const names = own.quilt.blocks.map(({ block, turn }) => (turn.mirrored ? `${block}r` : block));
    expect(letters(layout).map(({ text }) => text)).toEqual(names);
  });

  it('is pulled into rows, each with its number and the way it is pressed', () => {
    const rows = quiltRowsFigure(own.quilt, own.blocks, own.pressing);
    expect(letters(rows).map(({ text }) => text)).toEqual(['1', '2', '3', '4', '5']);
    expect(rows.height).toBeCloseTo(40 + 4 * 8 * 0.3, 6);
    // Seams between rows all one way, then rows right and left by turns: common practice.
    expect(arrows(rows).map(wayOf)).toEqual([
      'down',
      'down',
      'down',
      'down',
      'right',
      'left',
      'right',
      'left',
      'right',
    ]);
  });
});

describe('a block', () => {
  it.each(ALL_TURNS)('turned $quarters quarters (mirrored: $mirrored) moves every corner with it', (turn) => {
    const plain = blockFigure(beacon.piecing, 0.5, beacon.fabricOf);
    const turned = blockFigure(beacon.piecing, 0.5, beacon.fabricOf, { turn });
    const corners = (figure: Figure) => areas(figure).flatMap((area) => area.outlines.flat());
    expect(corners(turned)).toEqual(corners(plain).map((point) => turnPoint(point, turn, 4, 4)));
  });

  it('keeps of each patch only its own corners', () => {
    const outlines = areas(blockFigure(hearth.piecing, 1, hearth.fabricOf)).flatMap((area) => area.outlines);
    expect(outlines.every((outline) => outline.length === 4)).toBe(true);
  });

  it('in rows is sewn as rows first, then joined, pressed the way the plan says', () => {
    const steps = blockStepFigures(beacon.piecing, 1, beacon.fabricOf, beacon.pressing);
    expect(steps.map(({ kind }) => kind)).toEqual(['rows', 'join']);
    expect(arrows(steps[0]?.figure as Figure).map(wayOf)).toEqual(['right', 'right', 'left', 'left', 'right', 'right']);
    expect(arrows(steps[1]?.figure as Figure).map(wayOf)).toEqual(['down', 'down']);
  });

  it('of logs grows round by round: what is just sewn full, what was there pale, the rest not yet', () => {
    const steps = blockStepFigures(hearth.piecing, 1, hearth.fabricOf, hearth.pressing);
    expect(steps.map(({ logs }) => logs)).toEqual([
      { first: 0, last: 3 },
      { first: 4, last: 7 },
      { first: 8, last: 11 },
    ]);
    expect(steps.map(({ figure }) => figure.width)).toEqual([4, 6, 8]);
    const second = steps[1]?.figure as Figure;
    const cloth = (tone: Area['tone']) =>
      clothOf({ ...second, marks: areas(second).filter((area) => area.tone === tone) });
    expect([cloth('pale'), cloth('full')]).toEqual([16, 20]);
    expect(arrows(second).map(wayOf)).toEqual(['right', 'down', 'left', 'up']);
    expect(letters(second).map(({ text }) => text)).toEqual(['5', '6', '7', '8']);
  });
});

describe('smaller figures', () => {
  it('say the cut sizes of border strips in the order they are sewn', () => {
    expect(borderIds(own.quilt)).toEqual(['inner', 'outer']);
    const said = letters(borderFigure(own.quilt, own.blocks, 'outer')).map(({ text }) => text);
    // 4″ finished and two ¼″ seams; 35″ across what is there, then 43 + … down: butted, ends first (common practice).
    expect(said).toEqual(['1', '4½″ × 35½″', '2', '4½″ × 35½″', '3', '4½″ × 51½″', '4', '4½″ × 51½″']);
  });

  it('show the wrong side of cloth that lies right sides together', () => {
    const figure = sceneFigure(HST_SEWN, beacon.fabricOf);
    expect(areas(figure).map(({ fabric, tone }) => [fabric, tone])).toEqual([
      ['deep', 'full'],
      ['foam', 'wrong'],
    ]);
  });

  it('leave cloth without a fabric bare', () => {
    expect(areas(sceneFigure(HST_SEWN, {})).map(({ fabric }) => fabric)).toEqual([null, null]);
  });

  it('stand in a row at one scale with an arrow to the next', () => {
    const unit = beacon.piecing.units.find(({ kind }) => kind === 'geese');
    if (unit === undefined) throw new Error('The fixture has no geese');
    const row = inARow([unitFigure(unit, 1, beacon.fabricOf), unitFigure(unit, 1, beacon.fabricOf)]);
    expect(arrows(row).map((arrow) => [arrow.means, wayOf(arrow)])).toEqual([['next', 'right']]);
    expect(clothOf(row)).toBeCloseTo(2 * 4 * 2, 9);
  });

  it('draw the pieces of a strip to scale', () => {
    const pieces = [{ letter: 'A', width: 4.5, height: 4.5, count: 8 }];
    const figure = cuttingFigure('tide', 40, [{ height: 4.5, times: 3, pieces }]);
    const cloth = areas(figure).filter(({ fabric }) => fabric !== null);
    expect(clothOf({ ...figure, marks: cloth })).toBeCloseTo(8 * 4.5 * 4.5, 6);
    expect(letters(figure).filter(({ text }) => text === 'A')).toHaveLength(8);
  });
});
