import type { Words } from '../../../shared/writing/book.ts';
import { type Desk, setRuns, setWords } from '../desk.ts';
import type { RuleItem } from '../engine/items.ts';
import { columns } from '../sheet.ts';
import { baselineOf, TYPE } from '../type.ts';
import { movedContent, type Piece } from './piece.ts';

const AFTER_TITLE = 18;
/** A running stitch in the margin, the book's one ornament. */
const STITCH = [6, 4] as const;

/** A section's title with its stitches in the margin; the section's bookmark. */
export function sectionTitle(desk: Desk, title: string, newPage: boolean): Piece {
  const style = TYPE.sectionTitle;
  const box = setRuns(desk, [{ text: title, style }], desk.sheet.frameWidth);
  const y = baselineOf(style) - style.size * 0.24;
  const stitch: RuleItem = {
    kind: 'rule',
    x: -40,
    y,
    toX: -14,
    toY: y,
    weight: 1.6,
    colour: desk.palette.accent,
    stitch: STITCH,
  };
  return {
    height: box.height,
    before: 40,
    after: AFTER_TITLE,
    content: [{ tag: 'H1', items: box.items }],
    decor: [stitch],
    keepWithNext: true,
    bookmark: { title, level: 1 },
    ...(newPage ? { newPage: true } : {}),
  };
}

/** A heading inside a section. */
export function heading(desk: Desk, text: string): Piece {
  const box = setRuns(desk, [{ text, style: TYPE.heading }], columns(desk.sheet, 5));
  return {
    height: box.height,
    before: 26,
    after: 6,
    content: [{ tag: 'H2', items: box.items }],
    decor: [],
    keepWithNext: true,
    bookmark: { title: text, level: 2 },
  };
}

/** A paragraph, on four columns of the six so that its lines are easy to read; a lead on five. */
export function paragraph(desk: Desk, text: Words, tone: 'body' | 'lead' | 'quiet'): Piece {
  const box = setWords(desk, text, TYPE[tone], columns(desk.sheet, tone === 'lead' ? 5 : 4));
  return {
    height: box.height,
    before: 7,
    after: tone === 'lead' ? 14 : 7,
    content: [{ tag: 'P', items: box.items }],
    decor: [],
  };
}

const BULLET_INDENT = 12;

/** A list; an item is never parted. */
export function list(desk: Desk, items: readonly Words[]): Piece[] {
  const holder = { tag: 'L' } as const;
  const width = columns(desk.sheet, 4) - BULLET_INDENT;
  return items.map((item, index) => {
    const mark = setRuns(desk, [{ text: '–', style: { ...TYPE.body, colour: 'accent' } }], BULLET_INDENT);
    const words = setWords(desk, item, TYPE.body, width);
    const body = movedContent({ tag: 'LBody', items: words.items }, BULLET_INDENT, 0);
    return {
      height: words.height,
      before: index === 0 ? 7 : 4,
      content: [{ tag: 'LI', items: [], inside: [{ tag: 'Lbl', items: mark.items }, body] }],
      decor: [],
      holder,
    };
  });
}
