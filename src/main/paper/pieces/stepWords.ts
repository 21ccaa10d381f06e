import type { Step } from '../../../shared/writing/book.ts';
import { type Desk, setRuns, setWords } from '../desk.ts';
import type { Item } from '../engine/items.ts';
import type { Run } from '../engine/setText.ts';
import type { FigureRow } from '../figures.ts';
import { baselineOf, TYPE } from '../type.ts';
import { runsOf } from '../words.ts';
import { type Content, movedContent } from './piece.ts';

const NUMBER_WIDTH = 46;
const NUMBER_GAP = 14;
const PARAGRAPH_GAP = 5;

/** A step's number, hanging in the margin on the baseline of its first line. */
export function stepNumber(desk: Desk, number: number): Item[] {
  const style = TYPE.stepNumber;
  const box = setRuns(desk, [{ text: String(number), style }], NUMBER_WIDTH, 'right');
  const dy = baselineOf(TYPE.body) - baselineOf(style);
  return box.items.map((item) => ({ ...item, x: item.x - NUMBER_WIDTH - NUMBER_GAP, y: item.y + dy }));
}

/** A step's words, and under them its counts for each size. */
export function stepWords(desk: Desk, step: Step, width: number): FigureRow {
  const boxes = [
    ...step.words.map((words) => setWords(desk, words, TYPE.body, width)),
    ...(step.perSize === undefined ? [] : [setRuns(desk, perSizeRuns(step.perSize), width)]),
  ];
  let y = 0;
  const content = boxes.map((box): Content => {
    const part = movedContent({ tag: 'P', items: box.items }, 0, y);
    y += box.height + PARAGRAPH_GAP;
    return part;
  });
  return { content, height: Math.max(0, y - PARAGRAPH_GAP) };
}

/** `Make  Cot 16 · Lap 32 · Double 48`, each size kept by its number. */
function perSizeRuns(perSize: NonNullable<Step['perSize']>): Run[] {
  const style = TYPE.perSize;
  const bold = { ...style, bold: true };
  const pairs = perSize.values.flatMap(({ size, value }, index) => {
    const show = value.unit === 'inch' ? 'length' : value.unit === 'yard' ? 'yards' : 'count';
    const named = size === '' ? '' : `${size.replaceAll(' ', '\u00a0')}\u00a0`;
    const name = `${index === 0 ? '' : ' · '}${named}`;
    return [{ text: name, style }, ...runsOf([{ field: value, show }], bold)];
  });
  return [{ text: `${perSize.label}  `, style: { ...bold, colour: 'quiet' } }, ...pairs];
}
