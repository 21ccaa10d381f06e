import { borderFigure } from '../diagrams/borderFigure.ts';
import type { Traced } from '../measure/traced.ts';
import type { Border } from '../pattern/schema.ts';
import type { StripLeaf } from '../quilt/quilt.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { Block, Section, Step, Words } from './book.ts';
import { type Desk, fabricName } from './desk.ts';
import { inSizes, listed } from './words.ts';

/** Border by border, from the inside out. Without blocks when the pattern has no borders. */
export function bordersSection(desk: Desk): Section {
  const borders = desk.pattern.borders.filter((border) =>
    desk.sizes.some((size) => stripsOf(size, border.id).length > 0),
  );
  const steps = borders.map((border) => borderStep(desk, border));
  const opening: Block = {
    kind: 'words',
    tone: 'body',
    text: [
      'Measure the quilt top through its middle before you cut each border. If it is not what is given here, cut to your ',
      'own measure, the same for both sides.',
    ],
  };
  return {
    id: 'borders',
    title: 'Borders',
    newPage: false,
    blocks: steps.length === 0 ? [] : [opening, desk.number(steps)],
  };
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
      ...inSizes(lengths),
      `, ${where}. Press towards the border.`,
    ];
  });
  const left: Words[] = without.length === 0 ? [] : [[`${listed(without)} has no ${border.name.toLowerCase()}.`]];
  return {
    words: [...words, ...left],
    figures: [{ figure: borderFigure(shown.quilt, desk.blocks, border.id), caption: [shown.size.name] }],
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
