import { inchesText } from '../../../shared/measure/fraction.ts';
import { CENTIMETRE, type Units } from '../../../shared/measure/metric.ts';
import type { Traced } from '../../../shared/measure/traced.ts';
import { Refused } from '../../refusal.ts';
import { type Desk, setRuns } from '../desk.ts';
import type { Item, RuleItem } from '../engine/items.ts';
import { LABELS } from '../labels.ts';
import { columns, POINTS_PER_INCH } from '../sheet.ts';
import { TYPE } from '../type.ts';
import { movedContent, type Piece } from './piece.ts';

const TICK = 7;
const WEIGHT = 0.5;
const GAP = 16;

/**
 * A square to measure before cutting, exactly its size when the page is not scaled: the lines' middles are the edges.
 * A tick stands on its top edge at every inch, or centimetre.
 * @throws Refused when the square is wider than the page
 */
export function testSquare(desk: Desk, side: Traced, units: Units = 'inches'): Piece {
  const size = side.value * POINTS_PER_INCH;
  if (size > desk.sheet.frameWidth) {
    throw new Refused(
      'bad-input',
      `A test square of ${inchesText(side.value, units)} is wider than the page. Make it smaller.`,
    );
  }
  const beside = desk.sheet.frameWidth - size - GAP >= columns(desk.sheet, 2);
  const width = beside ? Math.min(columns(desk.sheet, 3), desk.sheet.frameWidth - size - GAP) : columns(desk.sheet, 4);
  const words = setRuns(desk, [{ text: LABELS.testSquare(inchesText(side.value, units)), style: TYPE.caption }], width);
  const [x, y] = beside ? [size + GAP, 0] : [0, size + 8];
  const caption = movedContent({ tag: 'Caption', items: words.items }, x, y);
  return {
    height: beside ? Math.max(size, words.height) : size + 8 + words.height,
    before: 18,
    content: [
      { tag: 'Figure', alt: `A square of ${inchesText(side.value, units)}`, items: square(desk, side.value, units) },
      caption,
    ],
    decor: [],
  };
}

function square(desk: Desk, inches: number, units: Units): Item[] {
  const colour = desk.palette.ink;
  const size = inches * POINTS_PER_INCH;
  const mark = units === 'inches' ? 1 : CENTIMETRE;
  const points = [
    [0, 0],
    [size, 0],
    [size, size],
    [0, size],
  ] as const;
  const ticks = Array.from({ length: Math.max(0, Math.ceil(inches / mark - 1e-6) - 1) }, (_, i): RuleItem => {
    const x = (i + 1) * mark * POINTS_PER_INCH;
    return { kind: 'rule', x, y: 0, toX: x, toY: TICK, weight: WEIGHT, colour };
  });
  const label = setRuns(desk, [{ text: inchesText(inches, units), style: TYPE.label }], size, 'center');
  const top = (size - label.height) / 2;
  return [
    { kind: 'shape', points, weight: WEIGHT, colour },
    ...ticks,
    ...label.items.map((item) => ({ ...item, y: item.y + top })),
  ];
}
