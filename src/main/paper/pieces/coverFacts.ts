import { sizeText } from '../../../shared/measure/fraction.ts';
import type { Block } from '../../../shared/writing/book.ts';
import { type Desk, setRuns } from '../desk.ts';
import { widthOf } from '../engine/setText.ts';
import { LABELS } from '../labels.ts';
import { TYPE } from '../type.ts';
import { type Content, movedContent } from './piece.ts';

type CoverBlock = Extract<Block, { kind: 'cover' }>;

const COLUMN_GAP = 28;
const NAME_GAP = 16;
const UNDER_LABEL = 2;
/** Skills stand a line each, as the sizes do, unless they are many. */
const MOST_LINES = 6;
const NAME = { ...TYPE.coverFact, bold: true };
/** Names of sizes take no more of their column than this. */
const NAME_SHARE = 0.62;

/** Sizes on the left, each with what it finishes to; skills on the right. */
export function coverFacts(desk: Desk, block: CoverBlock, width: number): Content[] {
  const half = (width - COLUMN_GAP) / 2;
  const skills = skillFacts(desk, block.skills, half).map((part) => movedContent(part, half + COLUMN_GAP, 0));
  return [...sizeFacts(desk, block, half), ...skills];
}

function sizeFacts(desk: Desk, { sizes, units }: CoverBlock, width: number): Content[] {
  const label = setRuns(desk, [{ text: LABELS.sizes, style: TYPE.coverLabel }], width);
  const names = sizes.map((size) => widthOf(desk.document, size.name, NAME) + 0.01);
  const column = Math.min(Math.max(0, ...names), width * NAME_SHARE);
  let y = label.height + UNDER_LABEL;
  const lines = sizes.map((size) => {
    const name = setRuns(desk, [{ text: `${size.name} `, style: NAME }], column);
    const text = sizeText(size.width.value, size.height.value, units);
    const finished = setRuns(desk, [{ text, style: TYPE.coverFact, whole: true }], width - column - NAME_GAP);
    const beside = finished.items.map((item) => ({ ...item, x: item.x + column + NAME_GAP }));
    const line = movedContent({ tag: 'P', items: [...name.items, ...beside] }, 0, y);
    y += Math.max(name.height, finished.height);
    return line;
  });
  return [{ tag: 'P', items: label.items }, ...lines];
}

function skillFacts(desk: Desk, skills: readonly string[], width: number): Content[] {
  if (skills.length === 0) return [];
  const label = setRuns(desk, [{ text: LABELS.skills, style: TYPE.coverLabel }], width);
  if (skills.length <= MOST_LINES)
    return [{ tag: 'P', items: label.items }, ...skillLines(desk, skills, width, label.height)];
  const runs = skills.flatMap((skill, i) => [
    ...(i === 0 ? [] : [{ text: ' · ', style: TYPE.coverFact }]),
    { text: skill, style: TYPE.coverFact, whole: true },
  ]);
  const box = setRuns(desk, runs, width);
  return [
    { tag: 'P', items: label.items },
    movedContent({ tag: 'P', items: box.items }, 0, label.height + UNDER_LABEL),
  ];
}

function skillLines(desk: Desk, skills: readonly string[], width: number, top: number): Content[] {
  let y = top + UNDER_LABEL;
  return skills.map((skill) => {
    const box = setRuns(desk, [{ text: skill, style: TYPE.coverFact }], width);
    const line = movedContent({ tag: 'P', items: box.items }, 0, y);
    y += box.height;
    return line;
  });
}
