import { borderFigure } from '../diagrams/borderFigure.ts';
import type { Border } from '../pattern/schema.ts';
import type { Block, Section, Step, Words } from './book.ts';
import { cuttingWords, stripsOf } from './borders/borderWords.ts';
import { plainBorderWords } from './borders/plainBorder.ts';
import type { Desk } from './desk.ts';
import { listed } from './words.ts';

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

function borderStep(desk: Desk, border: Border): Step {
  const sizes = desk.sizes.filter((size) => stripsOf(size, border.id).length > 0);
  const shown = sizes.includes(desk.shown) ? desk.shown : (sizes[0] ?? desk.shown);
  const without = desk.sizes.filter((size) => !sizes.includes(size)).map(({ size }) => size.name);
  const left: Words[] = without.length === 0 ? [] : [[`${listed(without)} has no ${border.name.toLowerCase()}.`]];
  return {
    words: [...cuttingWords(desk, border), ...plainBorderWords(desk, border), ...left],
    figures: [{ figure: borderFigure(shown.quilt, desk.blocks, border.id), caption: [shown.size.name] }],
  };
}
