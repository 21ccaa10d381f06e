import { foundationFigure } from '../diagrams/foundationFigure.ts';
import { templateFigure } from '../diagrams/templateFigure.ts';
import type { Inches } from '../measure/inches.ts';
import { CENTIMETRE, type Units } from '../measure/metric.ts';
import { count, given, type TracedSize } from '../measure/traced.ts';
import type { FoundationPaper } from '../piecing/foundation/paper.ts';
import type { Template } from '../piecing/templates/template.ts';
import { unitName } from '../piecing/unitNames.ts';
import type { Block, CaptionedFigure, Section, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { type UnitGroup, type UnitInSize, unitGroups } from './unitGroups.ts';
import { field, listed, sizeWords } from './words.ts';

/** The square on every page of templates: large enough that a printer's shrinking shows on a ruler. */
const TEST_SQUARE: Readonly<Record<Units, Inches>> = { inches: 1, centimetres: 3 * CENTIMETRE };

/** Everything that is printed at its true size: templates to cut round, and papers to sew on. */
export function templates(desk: Desk): Section {
  const groups = unitGroups(desk);
  const shapes = groups.flatMap((group) =>
    inEachSize(desk, group, ({ sized }) => sized.plan.templates ?? [], templateOf),
  );
  const papers = groups.flatMap((group) =>
    inEachSize(desk, group, ({ sized }) => sized.plan.foundations ?? [], paperOf),
  );
  return {
    id: 'templates',
    title: shapes.length === 0 ? 'Papers to sew on' : 'Templates',
    newPage: true,
    blocks:
      shapes.length + papers.length === 0
        ? []
        : [...block(shapes, TEMPLATE_WORDS, desk.units), ...block(papers, PAPER_WORDS, desk.units)],
  };
}

const TEMPLATE_WORDS: Words = [
  'Cut on the outer line; the dotted line is the seam. Points are cut blunt, so that raw edges lie even when the pieces are ' +
    'sewn. The arrow lies along the straight grain, and short lines at an edge are notches that meet those of its neighbour. ' +
    'Every template is shown as the piece looks from its right side.',
];

const PAPER_WORDS: Words = [
  'Print as many of each paper as are asked for. The lines between the numbers are sewn on, in order; the outer line is ' +
    'trimmed on; the dotted line is the seam by which a paper’s section is sewn to its neighbours. The papers are mirrored, ' +
    'because fabric lies on their back.',
];

function block(figures: readonly CaptionedFigure[], words: Words, units: Units): readonly Block[] {
  const side = given(TEST_SQUARE[units], 'test square');
  return figures.length === 0 ? [] : [{ kind: 'true-size', words, side, units, figures }];
}

type Draw<Shape> = (desk: Desk, group: UnitGroup, shape: Shape, its: readonly UnitInSize[]) => CaptionedFigure;

/** The true-size shapes of a unit, said once for all sizes in which they are the same. */
function inEachSize<Shape extends Template | FoundationPaper>(
  desk: Desk,
  group: UnitGroup,
  of: (one: UnitInSize) => readonly Shape[],
  draw: Draw<Shape>,
): readonly CaptionedFigure[] {
  const found = new Map<string, { readonly shape: Shape; readonly its: UnitInSize[] }>();
  for (const one of group.inSizes) {
    of(one).forEach((shape, i) => {
      const places = shape.cut.map(({ x, y }) => `${x.toFixed(3)},${y.toFixed(3)}`);
      const key = `${i} ${places.join(' ')}`;
      const known = found.get(key);
      if (known === undefined) found.set(key, { shape, its: [one] });
      else known.its.push(one);
    });
  }
  return [...found.values()].map(({ shape, its }) => draw(desk, group, shape, its));
}

function templateOf(desk: Desk, group: UnitGroup, template: Template, its: readonly UnitInSize[]): CaptionedFigure {
  const [one] = its as readonly [UnitInSize];
  const pieces = template.pieces.map((piece) => {
    return { ...piece, letter: letterOf(group, one, template.shape, piece.role) };
  });
  const name = [...new Set(pieces.map(({ letter }) => letter))].join(', ');
  const counts = pieces.flatMap(({ letter, count: plain, reversed }, i): Words => {
    const turned: Words = reversed === 0 ? [] : [' and ', field(count(reversed, 'reversed')), ' with it turned over'];
    return [i === 0 ? ': ' : '; ', { strong: letter }, ' – cut ', field(count(plain, 'for each unit')), ...turned];
  });
  const size = finishedSize(template);
  const finished: Words = [' (finished ', ...sizeWords(size), ')'];
  const caption: Words = [
    { strong: name },
    `, ${placeWords(desk, group, its)}`,
    ...finished,
    ...counts,
    ' for each unit.',
  ];
  return { figure: templateFigure(template, name, desk.units), caption, scale: 1 };
}

/** The box round the finished patch as the template lies. */
function finishedSize({ finished }: Template): TracedSize {
  const side = (of: 'x' | 'y') => {
    const places = finished.map((point) => point[of]);
    return given(Math.max(...places) - Math.min(...places), 'finished');
  };
  return { width: side('x'), height: side('y') };
}

/** The chart's letter of the piece that is cut round a shape. */
function letterOf({ block, unit }: UnitGroup, { size, sized }: UnitInSize, shape: string, role: string): string {
  const use = sized.plan.cuts.find((cut) => cut.shape === shape && cut.role === role)?.use ?? '';
  const line = size.cloth.pieces.find(
    ({ fabric, use: uses }) =>
      fabric === block.fabricOf[role] &&
      uses.some((one) => one.block === block.id && one.unit === unit.key && one.words.endsWith(use)),
  );
  return line?.letter ?? '';
}

function paperOf(desk: Desk, group: UnitGroup, paper: FoundationPaper, its: readonly UnitInSize[]): CaptionedFigure {
  const copies = its.flatMap(({ size, needed }, i): Words => {
    const name = desk.sizes.length === 1 ? '' : ` for ${size.size.name}`;
    return [i === 0 ? '' : ', ', field(count(needed, 'papers')), name];
  });
  const which = paper.letter === '' ? 'Paper' : `Paper ${paper.letter}`;
  const caption: Words = [{ strong: which }, `, ${placeWords(desk, group, its)}: print `, ...copies, '.'];
  return { figure: foundationFigure(paper, desk.units), caption, scale: 1 };
}

/** "block A, pieced unit, Lap and Double": the sizes only where not all of them have it. */
function placeWords(desk: Desk, { blocks, unit }: UnitGroup, its: readonly UnitInSize[]): string {
  const where = blocks.length === 1 ? `block ${blocks[0]}` : `blocks ${listed(blocks)}`;
  const only = its.length === desk.sizes.length ? '' : `, ${listed(its.map(({ size }) => size.size.name))}`;
  return `${where}, ${unitName(unit).toLowerCase()}${only}`;
}
