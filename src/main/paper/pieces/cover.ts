import type { Block } from '../../../shared/writing/book.ts';
import { type Desk, setRuns } from '../desk.ts';
import { drawnFigure } from '../drawnFigure.ts';
import type { Item } from '../engine/items.ts';
import { widthOf } from '../engine/setText.ts';
import { LABELS } from '../labels.ts';
import { atSize, TYPE } from '../type.ts';
import { coverFacts } from './coverFacts.ts';
import { bottomOf, type Content, movedContent, type Piece } from './piece.ts';

type CoverBlock = Extract<Block, { kind: 'cover' }>;

const TITLE_SIZES = [44, 38, 32, 28, 24] as const;
const MOST_TITLE_LINES = 2;
/** Bare cloth about the quilt. */
const AROUND = 40;
const UNDER_CLOTH = 24;
const UNDER_DESIGNER = 4;
const UNDER_TITLE = 12;
const UNDER_STITCH = 16;

/**
 * The cover: the quilt, flat and as large as can be, on a ground of undyed cloth that runs off the page; under it the
 * designer, the title, and the facts a buyer asks for.
 */
export function cover(desk: Desk, block: CoverBlock): Piece {
  const { sheet } = desk;
  const margin = sheet.width - sheet.left - sheet.frameWidth;
  const left = margin - sheet.left;
  const width = sheet.width - 2 * margin;
  const foot = coverFoot(desk, block, width);
  const footTop = sheet.frameHeight - foot.height;
  const cloth = { top: -sheet.top, height: sheet.top + footTop - UNDER_CLOTH };
  const { figure } = block;
  const scale = Math.min((sheet.width - 2 * AROUND) / figure.width, (cloth.height - 2 * AROUND) / figure.height);
  const drawn = drawnFigure(desk, figure, scale, true);
  const x = (sheet.width - drawn.width) / 2 - sheet.left;
  const y = cloth.top + (cloth.height - drawn.height) / 2;
  const ground: Item = {
    kind: 'fill',
    x: -sheet.left,
    y: cloth.top,
    width: sheet.width,
    height: cloth.height,
    colour: desk.palette.tone,
  };
  return {
    height: sheet.frameHeight,
    before: 0,
    content: [
      { tag: 'Figure', alt: figure.alt, items: [{ ...drawn, x, y }] },
      ...foot.content.map((part) => movedContent(part, left, footTop)),
    ],
    decor: [ground, stitches(desk, left, width, footTop + foot.stitch)],
    noFoot: true,
    newPage: true,
    bookmark: { title: LABELS.cover, level: 1 },
  };
}

interface CoverFoot {
  readonly content: readonly Content[];
  /** Where the running stitch goes. */
  readonly stitch: number;
  readonly height: number;
}

function coverFoot(desk: Desk, block: CoverBlock, width: number): CoverFoot {
  const designer = setRuns(desk, [{ text: desk.book.designer, style: TYPE.label }], width * 0.7);
  const edition = setRuns(desk, [{ text: desk.book.edition, style: { ...TYPE.label, bold: false } }], width, 'right');
  const title = movedContent(coverTitle(desk, desk.book.title, width), 0, designer.height + UNDER_DESIGNER);
  const stitch = bottomOf([title]) + UNDER_TITLE;
  const facts = coverFacts(desk, block, width).map((part) => movedContent(part, 0, stitch + UNDER_STITCH));
  const content: Content[] = [{ tag: 'P', items: designer.items }, { tag: 'P', items: edition.items }, title, ...facts];
  return { content, stitch, height: bottomOf(content) };
}

/** The title as large as fits on two lines with no word broken. */
function coverTitle(desk: Desk, title: string, width: number): Content {
  for (const size of TITLE_SIZES) {
    const style = atSize(TYPE.coverTitle, size);
    const whole = title.split(/\s+/u).every((word) => widthOf(desk.document, word, style) <= width);
    const box = setRuns(desk, [{ text: title, style }], width);
    const lines = new Set(box.items.map((item) => item.y)).size;
    if ((whole && lines <= MOST_TITLE_LINES) || size === TITLE_SIZES.at(-1)) return { tag: 'H1', items: box.items };
  }
  throw new Error('A cover title has no size to be set in');
}

function stitches(desk: Desk, x: number, width: number, y: number): Item {
  return { kind: 'rule', x, y, toX: x + width, toY: y, weight: 1.4, colour: desk.palette.accent, stitch: [6, 4.5] };
}
