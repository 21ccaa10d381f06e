import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A PDF opened again by a reader that shares no code with what wrote it. */
export interface OpenedPdf {
  readonly pages: readonly OpenedPage[];
  readonly info: Readonly<Record<string, unknown>>;
  /** Titles of bookmarks, those inside others indented by a space. */
  readonly bookmarks: readonly string[];
  close(): Promise<void>;
}

export interface OpenedPage {
  readonly width: number;
  readonly height: number;
  /** Everything printed, in the order it was written. */
  readonly runs: readonly TextRun[];
  /** The same, one space wherever there is any. */
  readonly text: string;
  /** Boxes of drawn paths, in points from the page's top left. */
  readonly paths: readonly PathBox[];
  /** What is there for those who read by ear. */
  readonly structure: Structure;
}

export interface TextRun {
  readonly text: string;
  readonly x: number;
  /** The baseline, from the page's top. */
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

export interface PathBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An element of the structure with the text it covers. */
export interface Structure {
  readonly role: string;
  readonly alt: string;
  readonly text: string;
  readonly inside: readonly Structure[];
}

type Matrix = readonly [number, number, number, number, number, number];
type Loaded = Awaited<ReturnType<typeof getDocument>['promise']>;
type Page = Awaited<ReturnType<Loaded['getPage']>>;

export async function openPdf(bytes: Uint8Array): Promise<OpenedPdf> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  const pages: OpenedPage[] = [];
  for (let number = 1; number <= document.numPages; number++)
    pages.push(await readPage(await document.getPage(number)));
  const { info } = await document.getMetadata();
  const outline = await document.getOutline();
  const bookmarks = outline.flatMap((item) => [
    item.title,
    ...item.items.map((inner: { title: string }) => ` ${inner.title}`),
  ]);
  return { pages, info: info as Record<string, unknown>, bookmarks, close: () => task.destroy() };
}

async function readPage(page: Page): Promise<OpenedPage> {
  const [, , width, height] = page.view as [number, number, number, number];
  const content = await page.getTextContent({ includeMarkedContent: true });
  const runs: TextRun[] = [];
  const marked = new Map<string, string>();
  const open: string[] = [];
  for (const item of content.items) {
    if ('str' in item) {
      for (const id of open) marked.set(id, (marked.get(id) ?? '') + item.str + (item.hasEOL ? ' ' : ''));
      const [, , , size, x, y] = item.transform as unknown as Matrix;
      if (item.str.trim() !== '') runs.push({ text: item.str, x, y: height - y, width: item.width, size });
    } else if (item.type === 'endMarkedContent') open.pop();
    else open.push(item.id ?? '');
  }
  const text = runs
    .map((run) => run.text)
    .join(' ')
    .replace(/\s+/gu, ' ');
  const tree = await page.getStructTree();
  return { width, height, runs, text, paths: await pathsOf(page, height), structure: structureOf(tree, marked) };
}

interface TreeNode {
  readonly role?: string;
  readonly alt?: string;
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly unknown[];
}

/** The reader lists elements of other pages too, without their content; those are left out. */
function structureOf(node: TreeNode, marked: ReadonlyMap<string, string>): Structure {
  const parts = ((node?.children ?? []) as TreeNode[])
    .filter(hasContent)
    .map((child) => (child.type === 'content' ? (marked.get(child.id ?? '') ?? '') : structureOf(child, marked)));
  return {
    role: node?.role ?? '',
    alt: node?.alt ?? '',
    text: parts.map((part) => (typeof part === 'string' ? part : part.text)).join(''),
    inside: parts.filter((part) => typeof part !== 'string'),
  };
}

function hasContent(node: TreeNode): boolean {
  return node.type === 'content' || ((node.children ?? []) as TreeNode[]).some(hasContent);
}

async function pathsOf(page: Page, height: number): Promise<PathBox[]> {
  const { fnArray, argsArray } = await page.getOperatorList();
  const boxes: PathBox[] = [];
  const kept: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  fnArray.forEach((operator, i) => {
    if (operator === OPS.save) kept.push(matrix);
    else if (operator === OPS.restore) matrix = kept.pop() ?? matrix;
    else if (operator === OPS.transform) matrix = times(matrix, argsArray[i] as Matrix);
    else if (operator === OPS.constructPath) {
      const box = (argsArray[i] as [number, unknown, Float32Array | null])[2];
      if (box !== null) boxes.push(boxUnder(matrix, box, height));
    }
  });
  return boxes;
}

function times(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[2] * b[1],
    a[1] * b[0] + a[3] * b[1],
    a[0] * b[2] + a[2] * b[3],
    a[1] * b[2] + a[3] * b[3],
    a[0] * b[4] + a[2] * b[5] + a[4],
    a[1] * b[4] + a[3] * b[5] + a[5],
  ];
}

function boxUnder([a, b, c, d, e, f]: Matrix, box: Float32Array, height: number): PathBox {
  const [left = 0, top = 0, right = 0, bottom = 0] = box;
  const x = [a * left + c * top + e, a * right + c * bottom + e];
  const y = [height - (b * left + d * top + f), height - (b * right + d * bottom + f)];
  const [x0, x1, y0, y1] = [Math.min(...x), Math.max(...x), Math.min(...y), Math.max(...y)];
  return { x: x0, y: y0, width: x1 - x0, height: y1 - y0 };
}

/** Every element of a role, however deep. */
export function all(structure: Structure, role: string): readonly Structure[] {
  const here = structure.role === role ? [structure] : [];
  return [...here, ...structure.inside.flatMap((inner) => all(inner, role))];
}

/** Text without any space, for comparing what may be broken over lines. */
export function solid(text: string): string {
  return text.replace(/\s/gu, '');
}
