import type { PieceLine } from '../cloth/cloth.ts';
import { borderFigure } from '../diagrams/borderFigure.ts';
import type { Border } from '../pattern/schema.ts';
import type { Block, Section, Step, Words } from './book.ts';
import { cuttingWords, hasBorder } from './borders/borderWords.ts';
import { piecedBorderWords } from './borders/piecedBorder.ts';
import { plainBorderWords } from './borders/plainBorder.ts';
import { type Desk, shownFigure } from './desk.ts';
import { listed } from './words.ts';

/** Border by border, from the inside out. Without blocks when the pattern has no borders. */
export function bordersSection(desk: Desk): Section {
  const borders = desk.pattern.borders.filter((border) => desk.sizes.some((size) => hasBorder(size, border.id)));
  const steps = borders.map((border) => borderStep(desk, border));
  const opening = (text: string): Block => ({ kind: 'words', tone: 'body', text: [text] });
  return {
    id: 'borders',
    title: 'Borders',
    newPage: false,
    blocks: steps.length === 0 ? [] : [...openings(desk).map(opening), desk.number(steps)],
  };
}

function openings(desk: Desk): readonly string[] {
  const straight = (line: PieceLine) => line.joined !== undefined && line.lostInJoin === undefined;
  const joined = desk.sizes.some(({ cloth }) => cloth.pieces.some(straight));
  const joining =
    'Where a border is cut from several strips, join them end to end first with straight seams, press these open, and cut ' +
    'both lengths from the joined strip.';
  return [
    'Measure the quilt top through its middle before you cut each border to length. If it is not what is given here, cut ' +
      'to your own measure, the same for both sides.',
    ...(joined ? [joining] : []),
  ];
}

function borderStep(desk: Desk, border: Border): Step {
  const sizes = desk.sizes.filter((size) => hasBorder(size, border.id));
  const shown = sizes.includes(desk.shown) ? desk.shown : (sizes[0] ?? desk.shown);
  const without = desk.sizes.filter((size) => !sizes.includes(size)).map(({ size }) => size.name);
  const own =
    border.pieced === undefined
      ? [...cuttingWords(desk, border), ...plainBorderWords(desk, border)]
      : piecedBorderWords(desk, border);
  const goes = without.length === 1 ? 'goes' : 'go';
  const left: Words[] = without.length === 0 ? [] : [[`${listed(without)} ${goes} without this border.`]];
  return {
    words: [...own, ...left],
    figures: [shownFigure(desk, shown, borderFigure(shown.quilt, desk.blocks, border.id, desk.units))],
  };
}
