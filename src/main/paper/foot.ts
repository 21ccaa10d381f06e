import { anyStops } from '../../shared/measure/finding.ts';
import { type Desk, setRuns } from './desk.ts';
import type { Item } from './engine/items.ts';
import { widthOf } from './engine/setText.ts';
import { LABELS } from './labels.ts';
import { columns } from './sheet.ts';
import { baselineOf, TYPE } from './type.ts';

/** The running foot: pattern and edition, page of pages; on a draft a line that says so, on the cover too. */
export function footItems(desk: Desk, page: number, pages: number, draft: boolean, bare: boolean): Item[] {
  const { sheet, book } = desk;
  const top = sheet.foot - baselineOf(TYPE.foot);
  const edition = `   ${book.edition}`;
  const room = columns(sheet, 5) - widthOf(desk.document, edition, TYPE.foot);
  const title = { text: cutTo(desk, book.title, room), style: NAME };
  const left = setRuns(desk, [title, { text: edition, style: TYPE.foot }], sheet.frameWidth).items;
  const right = setRuns(desk, [{ text: LABELS.page(page, pages), style: TYPE.foot }], sheet.frameWidth, 'right').items;
  const words = anyStops(book.findings) ? LABELS.unfitDraft : LABELS.draft;
  const said = draft ? setRuns(desk, [{ text: words, style: TYPE.draft }], columns(sheet, 5)).items : [];
  const under = said.map((item) => ({ ...item, y: item.y + TYPE.foot.leading }));
  return [...(bare ? [] : [...left, ...right]), ...under].map((item) => ({ ...item, y: item.y + top }));
}

const NAME = { ...TYPE.foot, bold: true };

/** A name on one line: a very long one is cut, for it stands whole on the cover. */
function cutTo(desk: Desk, text: string, width: number): string {
  if (widthOf(desk.document, text, NAME) <= width) return text;
  let end = text.length;
  while (end > 1 && widthOf(desk.document, `${text.slice(0, end)}…`, NAME) > width) end -= 1;
  return `${text.slice(0, end).trimEnd()}…`;
}
