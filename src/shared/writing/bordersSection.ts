import { borderFigure } from '../diagrams/borderFigure.ts';
import type { Traced } from '../measure/traced.ts';
import type { Border } from '../pattern/schema.ts';
import type { StripLeaf } from '../quilt/quilt.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Section, Step, Words } from './book.ts';
import { type Desk, fabricName, namesOf, shownFigure } from './desk.ts';
import { inSizes, listed } from './words.ts';

/** Border by border, from the inside out. Without blocks when the pattern has no borders. */
export function bordersSection(desk: Desk): Section {
  const borders = desk.pattern.borders.filter((border) =>
    desk.sizes.some((size) => stripsOf(size, border.id).length > 0),
  );
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
  const joined = desk.sizes.some(({ cloth }) => cloth.pieces.some((line) => line.joined !== undefined));
  const joining =
    'Where a border is cut from several strips, join them end to end first with straight seams, press these open, and cut ' +
    'both lengths from the joined strip.';
  return [
    'Measure the quilt top through its middle before you cut each border to length. If it is not what is given here, cut ' +
      'to your own measure, the same for both sides.',
    ...(joined ? [joining] : []),
  ];
}

function stripsOf({ quilt }: WorkedSize, border: string): readonly StripLeaf[] {
  return quilt.strips.filter((strip) => strip.border === border);
}

function borderStep(desk: Desk, border: Border): Step {
  const sizes = desk.sizes.filter((size) => stripsOf(size, border.id).length > 0);
  const shown = sizes.includes(desk.shown) ? desk.shown : (sizes[0] ?? desk.shown);
  const without = desk.sizes.filter((size) => !sizes.includes(size)).map(({ size }) => size.name);
  const pairs = border.first === 'sides' ? (['left', 'top'] as const) : (['top', 'left'] as const);
  const words = pairs.map((side, i): Words => {
    const strips = sizes.map((size) => stripsOf(size, border.id).find((strip) => strip.side === side));
    const where = side === 'left' ? 'to the sides' : 'to the top and bottom';
    const lengths = strips.map((strip) => strip?.cutLength).filter((length): length is Traced => length !== undefined);
    const letter = letterOf(shown, border.id, side);
    const start = i === 0 ? `${border.name}, ${fabricName(desk.pattern, border.fabric)}. Sew` : 'Then sew';
    return [
      `${start} two `,
      { strong: letter },
      ', cut ',
      ...inSizes(lengths, namesOf(desk, sizes)),
      `, ${where}. Press towards the border.`,
    ];
  });
  const goes = without.length === 1 ? 'goes' : 'go';
  const left: Words[] = without.length === 0 ? [] : [[`${listed(without)} ${goes} without this border.`]];
  return {
    words: [...words, ...left],
    figures: [shownFigure(desk, shown, borderFigure(shown.quilt, desk.blocks, border.id))],
  };
}

/** The chart letter of a border's side strips or of its top and bottom. */
function letterOf(size: WorkedSize, border: string, side: 'left' | 'top'): string {
  const pair = side === 'left' ? 'sides' : 'ends';
  const line = size.cloth.pieces.find((piece) =>
    piece.use.some(({ unit, words }) => unit === border && words.endsWith(pair)),
  );
  return line?.letter ?? '';
}
