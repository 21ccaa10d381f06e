import type { Words } from '../../../shared/writing/book.ts';
import { type Desk, setRuns, setWords } from '../desk.ts';
import type { Item } from '../engine/items.ts';
import { LABELS } from '../labels.ts';
import { columnStart, columns } from '../sheet.ts';
import { baselineOf, TYPE } from '../type.ts';
import { bottomOf, type Content, movedContent, type Piece } from './piece.ts';

const PAD = 12;
const TITLE_GAP = 4;
const ITEM_GAP = 5;

/** A caution, in as many boxes as pages make it need; each but the first says that it goes on. */
export function caution(desk: Desk, title: string, items: readonly Words[]): Piece[] {
  const boxes: Piece[] = [];
  for (let rest = items; rest.length > 0; ) {
    const called = boxes.length === 0 ? title : `${title}, ${LABELS.continued}`;
    let many = rest.length;
    let box = cautionBox(desk, called, rest);
    while (many > 1 && box.height > desk.sheet.frameHeight) {
      many -= 1;
      box = cautionBox(desk, called, rest.slice(0, many));
    }
    boxes.push(box);
    rest = rest.slice(many);
  }
  return boxes;
}

/** Hairlines above and below, a warning triangle in the margin, the points in two columns. */
function cautionBox(desk: Desk, title: string, items: readonly Words[]): Piece {
  const style = { ...TYPE.chartTitle, size: 10, leading: 14, colour: 'alarm' } as const;
  const box = setRuns(desk, [{ text: title, style }], desk.sheet.frameWidth);
  const head = movedContent({ tag: 'H3', items: box.items }, 0, PAD);
  const points = setPoints(desk, items, PAD + box.height + TITLE_GAP);
  const height = bottomOf([head, ...points]) + PAD;
  return {
    height,
    before: 20,
    content: [head, { tag: 'L', items: [], inside: points }],
    decor: [hairline(desk, 0), ...triangle(desk, PAD + baselineOf(style)), hairline(desk, height)],
  };
}

/** The points in two columns, the first filled to about half the height. */
function setPoints(desk: Desk, items: readonly Words[], top: number): Content[] {
  const boxes = items.map((item) => setWords(desk, item, TYPE.body, columns(desk.sheet, 3)));
  const half = boxes.reduce((sum, box) => sum + box.height + ITEM_GAP, 0) / 2;
  let [column, y, used] = [0, top, 0];
  return boxes.map((box) => {
    if (column === 0 && used > 0 && used + box.height / 2 > half) [column, y] = [1, top];
    const body = movedContent({ tag: 'LBody', items: box.items }, column === 0 ? 0 : columnStart(desk.sheet, 3), y);
    y += box.height + ITEM_GAP;
    used += box.height + ITEM_GAP;
    return { tag: 'LI', items: [], inside: [body] } as const;
  });
}

function hairline(desk: Desk, y: number): Item {
  return { kind: 'rule', x: 0, y, toX: desk.sheet.frameWidth, toY: y, weight: 0.5, colour: desk.palette.alarm };
}

/** The general warning sign of ISO 7010 (W001) in outline, standing on the title's baseline. */
function triangle(desk: Desk, baseline: number): Item[] {
  const [left, width, height] = [-33, 15, 13];
  const middle = left + width / 2;
  const top = baseline + 1 - height;
  const colour = desk.palette.alarm;
  const points = [
    [middle, top],
    [left + width, baseline + 1],
    [left, baseline + 1],
  ] as const;
  const stroke = (from: number, to: number): Item => ({
    kind: 'rule',
    x: middle,
    y: from,
    toX: middle,
    toY: to,
    weight: 1.3,
    colour,
  });
  return [{ kind: 'shape', points, weight: 1, colour }, stroke(top + 4.6, top + 9), stroke(top + 10.2, top + 11.6)];
}
