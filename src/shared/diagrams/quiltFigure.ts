import { fractionOf } from '../measure/fraction.ts';
import { centimetresOf, type Units } from '../measure/metric.ts';
import type { BlockLeaf, Quilt } from '../quilt/quilt.ts';
import { areasOf, type FigureBlock } from './blockCloth.ts';
import { borderIds } from './borderFigure.ts';
import type { Area, Figure, Letter, Mark } from './figure.ts';
import { boxLine, letter, middleOf } from './marks.ts';
import { gatherCloth, pieceLine } from './quiltCloth.ts';
import { scrapsIn } from './scraps.ts';
import { turnMark } from './turnMark.ts';

export interface QuiltFigureOptions {
  /** What its size is told in, in words; left out, inches. */
  readonly units?: Units;
  /** With its borders; without, the blocks alone in their place. */
  readonly borders: boolean;
  /** An arrow in each block that points where its top lies. */
  readonly turns?: 'arrows';
  /** The letter of each block. */
  readonly letters?: boolean;
  /** The outlines of blocks and borders. */
  readonly lines?: boolean;
  /** 'patch' outlines every patch (the default), 'none' leaves flat cloth, as small pictures want. */
  readonly edges?: 'patch' | 'none';
  readonly tone?: Area['tone'];
  /** The size's name, for those who cannot see it. */
  readonly name?: string;
}

/** The whole quilt in colour, in finished inches. Every fabric is one area, however many patches it has. */
export function quiltFigure(quilt: Quilt, blocks: readonly FigureBlock[], options: QuiltFigureOptions): Figure {
  const { borders, edges = 'patch', tone = 'full' } = options;
  const gathering = gatherCloth(blocks, scrapsIn(quilt, blocks));
  const setting = [...quilt.blocks, ...quilt.patches].filter((piece) => borders || piece.border === undefined);
  const shown = [...setting, ...quilt.triangles, ...(borders ? quilt.strips : [])];
  for (const leaf of shown) gathering.add(leaf);
  const [width, height] = [quilt.finished.width.value, quilt.finished.height.value];
  const marks: Mark[] = [...areasOf(gathering.cloth, tone, edges)];
  if (options.lines) marks.push(...shown.map((leaf) => pieceLine(leaf)));
  if (borders && edges !== 'none') marks.push(boxLine({ x: 0, y: 0, width, height }, 'unit'));
  if (options.turns === 'arrows') marks.push(...turnMarks(quilt, options.letters === true));
  if (options.letters) marks.push(...blockLetters(quilt, options.turns === 'arrows'));
  return { width, height, marks, alt: quiltAlt(quilt, options.name, options.units) };
}

/** How every block lies. Letters beside them tell which are mirrored; without letters feet do, when any is. */
export function turnMarks(quilt: Quilt, lettered: boolean): readonly Mark[] {
  const feet = !lettered && quilt.blocks.some((leaf) => leaf.turn.mirrored);
  return inSetting(quilt).flatMap((leaf) => turnMark(leaf.box, leaf.turn, feet, leaf.tilt));
}

/** The letter of every block, in its corner when its middle is taken; “Ar” is A sewn as its mirror image. */
export function blockLetters(quilt: Quilt, inCorner: boolean): readonly Letter[] {
  return inSetting(quilt).map(({ block, turn, box, tilt = 0 }) => {
    const text = turn.mirrored ? `${block}r` : block;
    if (!inCorner) return letter(text, middleOf(box));
    // On point the upper corner has the most room.
    if (tilt !== 0) return letter(text, { x: box.x + box.width / 2, y: box.y - box.height * 0.02 });
    return letter(text, { x: box.x + box.width * 0.2, y: box.y + box.height * 0.24 });
  });
}

/** The blocks of the setting: the units of a border show how they lie. */
function inSetting({ blocks }: Quilt): readonly BlockLeaf[] {
  return blocks.filter(({ border }) => border === undefined);
}

/** What the quilt is, in a sentence. */
export function quiltAlt(quilt: Quilt, name = 'The quilt', units: Units = 'inches'): string {
  const borders = borderIds(quilt).length;
  const bordered = borders === 0 ? 'no borders' : borders === 1 ? 'one border' : `${borders} borders`;
  const say = units === 'inches' ? fractionOf : centimetresOf;
  const [width, height] = [say(quilt.finished.width.value), say(quilt.finished.height.value)];
  return `${name}: ${blocksAlt(quilt)} with ${bordered}, ${width} by ${height} ${units} finished.`;
}

function blocksAlt(quilt: Quilt): string {
  const blocks = inSetting(quilt);
  if (blocks.some(({ tilt }) => tilt !== undefined)) return `${blocks.length} blocks on point`;
  const across = new Set(blocks.map((leaf) => leaf.column)).size;
  const down = new Set(blocks.map((leaf) => leaf.row)).size;
  return `${across} blocks across and ${down} down`;
}
