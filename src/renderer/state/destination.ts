import type { Finding } from '../../shared/measure/finding.ts';
import type { Pattern } from '../../shared/pattern/schema.ts';
import { type Selection, WHOLE_PATTERN } from './selection.ts';
import type { ViewId } from './viewId.ts';

/** Where a finding is looked at: the view, the size when it concerns one, and what is selected there. */
export interface Destination {
  readonly view: ViewId;
  /** Id of the size. */
  readonly size?: string;
  readonly selection: Selection;
}

type Head =
  | 'blocks'
  | 'recipes'
  | 'borders'
  | 'sizes'
  | 'fabrics'
  | 'setting'
  | 'words'
  | 'house'
  | 'binding'
  | 'backing';

/** The first name and number of a path such as `sizes[1].borders.outer`. */
function headOf(path: string): { readonly head: string; readonly index: number; readonly rest: string } {
  const match = /^([a-z]+)(?:\[(\d+)\])?\.?(.*)$/i.exec(path);
  return { head: match?.[1] ?? '', index: Number(match?.[2] ?? 0), rest: match?.[3] ?? '' };
}

const VIEW_OF: Readonly<Record<Head, ViewId>> = {
  blocks: 'block',
  recipes: 'block',
  borders: 'quilt',
  sizes: 'quilt',
  setting: 'quilt',
  fabrics: 'quilt',
  words: 'pages',
  house: 'cloth',
  binding: 'cloth',
  backing: 'cloth',
};

function sizeIdOf(finding: Finding, pattern: Pattern): string | undefined {
  const { head, index } = headOf(finding.where.path);
  const named = pattern.sizes.find(({ id, name }) => finding.where.size === name || finding.where.size === id);
  return named?.id ?? (head === 'sizes' ? pattern.sizes[index]?.id : undefined);
}

function selectionOf(path: string, pattern: Pattern): Selection {
  const { head, index, rest } = headOf(path);
  const border = /^borders[.[]["']?([a-z0-9-]+)/.exec(rest)?.[1];
  if (head === 'sizes' && border !== undefined) return { kind: 'border', border };
  const size = head === 'sizes' ? pattern.sizes[index] : undefined;
  if (size !== undefined) return { kind: 'size', size: size.id };
  if (head === 'setting') return { kind: /^(motif|single|reflect)/.test(rest) ? 'motif' : 'setting' };
  const block = blockAt(head, index, pattern);
  if (block !== undefined) return { kind: 'block', block };
  const strip = head === 'borders' ? pattern.borders[index] : undefined;
  if (strip !== undefined) return { kind: 'border', border: strip.id };
  const fabric = head === 'fabrics' ? pattern.fabrics[index] : undefined;
  return fabric === undefined ? WHOLE_PATTERN : { kind: 'fabric', fabric: fabric.id };
}

function blockAt(head: string, index: number, pattern: Pattern): string | undefined {
  if (head === 'blocks') return pattern.blocks[index]?.id;
  if (head !== 'recipes') return undefined;
  const recipe = pattern.recipes[index]?.id;
  return pattern.blocks.find((block) => block.recipe === recipe)?.id;
}

/** Where to go for a finding. A path nobody knows leads to the quilt as a whole. */
export function destinationOf(finding: Finding, pattern: Pattern): Destination {
  const { head } = headOf(finding.where.path);
  const view = head in VIEW_OF ? VIEW_OF[head as Head] : 'quilt';
  const size = sizeIdOf(finding, pattern);
  const selection = selectionOf(finding.where.path, pattern);
  return { view, selection, ...(size === undefined ? {} : { size }) };
}
