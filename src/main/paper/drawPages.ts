import type { Desk } from './desk.ts';
import { drawItem } from './engine/drawItem.ts';
import type { Item } from './engine/items.ts';
import type { OutlineItem, StructureElement } from './engine/library.ts';
import type { Page, Placed } from './flow/paginate.ts';
import { footItems } from './foot.ts';
import type { Drawn } from './guard.ts';
import { type Content, type Holder, itemsOf } from './pieces/piece.ts';

/** What is kept from one page to the next while drawing. */
export interface Drawing {
  readonly desk: Desk;
  readonly root: StructureElement;
  readonly holders: Map<Holder, StructureElement>;
  readonly drawn: Drawn;
  bookmark: OutlineItem | null;
}

/** Begins the drawing of a book: the root of its structure. */
export function startDrawing(desk: Desk, drawn: Drawn): Drawing {
  const root = desk.document.struct('Document', { title: desk.book.title });
  desk.document.addStructure(root);
  return { desk, root, holders: new Map(), drawn, bookmark: null };
}

/** Draws one page with its foot. Marks that say nothing, feet and repeated heads are artifacts to those who read by ear. */
export function drawPage(drawing: Drawing, page: Page, number: number, pages: number, draft: boolean): void {
  const { desk } = drawing;
  const { document, sheet } = desk;
  document.addPage({ size: [sheet.width, sheet.height], margin: 0 });
  artifact(
    drawing,
    'Layout',
    page.flatMap(({ piece, y }) => shifted(piece.decor, y)),
  );
  for (const placed of page) drawPlaced(drawing, placed);
  const foot = footItems(
    desk,
    number,
    pages,
    draft,
    page.some(({ piece }) => piece.noFoot === true),
  );
  artifact(
    drawing,
    'Pagination',
    foot.map((item) => ({ item, top: 0 })),
  );
}

interface Shifted {
  readonly item: Item;
  readonly top: number;
}

function shifted(items: readonly Item[], top: number): Shifted[] {
  return items.map((item) => ({ item, top }));
}

function artifact({ desk }: Drawing, type: 'Pagination' | 'Layout', items: readonly Shifted[]): void {
  if (items.length === 0) return;
  const { document, sheet } = desk;
  document.markContent('Artifact', { type });
  for (const { item, top } of items) drawItem(document, item, sheet.left, (type === 'Layout' ? sheet.top : 0) + top);
  document.endMarkedContent();
}

function drawPlaced(drawing: Drawing, { piece, y, again }: Placed): void {
  if (again) {
    artifact(
      drawing,
      'Layout',
      piece.content.flatMap(itemsOf).map((item) => ({ item, top: y })),
    );
    return;
  }
  if (piece.bookmark) drawing.bookmark = addBookmark(drawing, piece.bookmark);
  const parent = piece.holder === undefined ? drawing.root : holderElement(drawing, piece.holder);
  for (const part of piece.content) drawContent(drawing, parent, part, y);
}

function addBookmark(
  { desk, bookmark }: Drawing,
  { title, level }: { title: string; level: 1 | 2 },
): OutlineItem | null {
  const { outline } = desk.document;
  if (level === 1) return outline.addItem(title, { expanded: false });
  (bookmark ?? outline).addItem(title);
  return bookmark;
}

function holderElement({ desk, holders, root }: Drawing, holder: Holder): StructureElement {
  const known = holders.get(holder);
  if (known !== undefined) return known;
  const element = desk.document.struct(holder.tag);
  root.add(element);
  holders.set(holder, element);
  return element;
}

function drawContent(drawing: Drawing, parent: StructureElement, part: Content, y: number): void {
  const { document, sheet } = drawing.desk;
  const top = sheet.top + y;
  const element = document.struct(part.tag, {
    ...(part.alt ? { alt: part.alt } : {}),
    scope: part.scope,
    bbox: boxOf(drawing, part, top),
  });
  if (part.span !== undefined) element.dictionary.data.A = { O: 'Table', Scope: part.scope, ColSpan: part.span };
  parent.add(element);
  if (part.items.length > 0) {
    element.add(() => {
      for (const item of part.items) drawItem(document, item, sheet.left, top);
    });
    drawing.drawn.record(part, sheet, y);
  }
  for (const inner of part.inside ?? []) drawContent(drawing, element, inner, y);
}

function boxOf({ desk }: Drawing, part: Content, top: number): readonly [number, number, number, number] | undefined {
  const figure = part.items.find((item) => item.kind === 'figure');
  if (part.tag !== 'Figure' || figure === undefined) return undefined;
  const [x, y] = [desk.sheet.left + figure.x, top + figure.y];
  return [x, y, x + figure.width, y + figure.height];
}
