import { BINDING_KEY } from '../cloth/letters.ts';
import { biasSquareFigure, biasStripsFigure, biasTubeFigure } from '../diagrams/biasFigure.ts';
import type { WorkedSize } from '../workroom/workedOut.ts';
import type { CaptionedFigure, Step, Words } from './book.ts';
import { type Desk, shownFigure } from './desk.ts';
import { field, inSizes, sizeWords, strong } from './words.ts';

type Binding = WorkedSize['cloth']['binding'];

/** What the chart says of the binding: a name and what stands in each size. "8 of 2½″"; on the bias, what they are cut from, too. */
export function bindingRows({ binding }: Desk['pattern']): readonly (readonly [string, (size: WorkedSize) => Words])[] {
  const strips = ({ cloth }: WorkedSize): Words => [
    field(cloth.binding.strips),
    ' of ',
    field(cloth.binding.stripWidth),
  ];
  if (binding.cut === undefined) return [['Binding strips', strips]];
  return [
    ['Binding cut from', ({ cloth }) => clothWords(cloth.binding)],
    ['Bias strips', strips],
  ];
}

/** "26″ square", "2 of 27″ square", "40″ × 52″". */
function clothWords({ from }: Binding): Words {
  if (from === undefined) return ['–'];
  return [...(from.pieces.value === 1 ? [] : [field(from.pieces), ' of ']), ...sizeWords(from)];
}

/** How the binding is cut when it is on the bias, and how it is sewn on. */
export function bindingSteps(desk: Desk): readonly Step[] {
  const bindings = desk.sizes.map(({ cloth }) => cloth.binding);
  const lengths = bindings.map(({ length }) => length);
  const last: Step = {
    words: [
      [
        joinedWords(bindings),
        ' It takes ',
        ...inSizes(lengths),
        ' of strip, joins and corners counted in. Trim the layers even with the quilt top, sew the binding on, fold it over the edge and sew it down.',
      ],
    ],
    figures: [],
  };
  const { cut } = desk.pattern.binding;
  if (cut === undefined) return [last];
  return [...(cut === 'bias' ? [biasStep(desk)] : continuousSteps(desk)), last];
}

const FOLD = 'old the strip lengthwise with the wrong sides together and press.';

function joinedWords(bindings: readonly Binding[]): string {
  const cut = bindings[0]?.cut ?? 'straight';
  if (cut === 'straight') return `Join the binding strips end to end with diagonal seams, press these open, f${FOLD}`;
  if (cut === 'bias') {
    return `Join the bias strips end to end along their slanted ends, right sides together, press the seams open, f${FOLD}`;
  }
  if (bindings.every(({ strips }) => strips.value === 1)) return `F${FOLD}`;
  return `Where there is more than one strip, join them with diagonal seams and press these open; f${FOLD}`;
}

function biasStep(desk: Desk): Step {
  const bindings = desk.sizes.map(({ cloth }) => cloth.binding);
  return {
    words: [
      [
        'Cut the binding cloth, ',
        strong(letterOf(desk)),
        ', into bias strips: make the first cut from a corner, at 45° to the edges, and the others ',
        ...inSizes(bindings.map(({ stripWidth }) => stripWidth)),
        ' apart on both sides of it. Take the longest of the strips, ',
        ...inSizes(bindings.map(({ strips }) => strips)),
        ' in all. They stretch: do not pull them.',
      ],
    ],
    figures: [drawnBias(desk, biasStripsFigure)],
  };
}

function continuousSteps(desk: Desk): readonly Step[] {
  const bindings = desk.sizes.map(({ cloth }) => cloth.binding);
  const each = bindings.every(({ from }) => from?.pieces.value === 1) ? 'the square' : 'each square';
  const square: Words = [
    `Cut ${each} for the binding, `,
    strong(letterOf(desk)),
    ', once on the diagonal. Lay the two triangles right sides together along a straight side of each, so that they open into a leaning shape. Sew, and press the seam open.',
  ];
  const tube: Words = [
    'On the wrong side, draw lines along the slanted sides, ',
    ...inSizes(bindings.map(({ stripWidth }) => stripWidth)),
    ' apart; cut off what is left at the end. Bring the two upright sides right sides together into a tube, one line moved on, so that equal numbers meet. Sew, press open, and cut along the line, round and round, into one strip.',
  ];
  return [
    { words: [square], figures: [drawnBias(desk, biasSquareFigure)] },
    { words: [tube], figures: [drawnBias(desk, biasTubeFigure)] },
  ];
}

function letterOf({ shown }: Desk): string {
  return shown.cloth.pieces.find(({ use }) => use.some(({ unit }) => unit === BINDING_KEY))?.letter ?? '';
}

function drawnBias(desk: Desk, draw: typeof biasStripsFigure): CaptionedFigure {
  const { fabric, from, stripWidth } = desk.shown.cloth.binding;
  const [width, height] = [from?.width.value ?? 1, from?.height.value ?? 1];
  return shownFigure(desk, desk.shown, draw({ fabric, width, height, strip: stripWidth.value }, desk.units));
}
