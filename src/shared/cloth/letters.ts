import type { Pattern } from '../pattern/schema.ts';
import type { Cut } from '../piecing/method.ts';
import type { PatchLeaf, Quilt, TriangleUse } from '../quilt/quilt.ts';
import type { SizedBlock } from '../quilt/sized.ts';
import { setSignature } from './setSignature.ts';

/** For each block's letter, each role's fabric. */
export type FabricOf = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** The letter of everything that is cut; the same in every size. Ask with `cutKey`, `borderKey` or `BINDING_KEY`. */
export type Letters = Readonly<Record<string, string>>;

/** One size as far as its pieces go. */
export interface LetteredSize {
  readonly blocks: readonly SizedBlock[];
  readonly quilt: Pick<Quilt, 'patches' | 'triangles'>;
}

export const BINDING_KEY = 'binding';

/** Names one cut of one unit of one block: `index` is the cut's place in the method's plan. */
export function cutKey(block: string, unit: string, index: number): string {
  return `block ${block} | ${unit} | ${index}`;
}

/** Names a plain piece of the setting; equal for all that are cut alike in one size. */
export function patchKey({ name }: PatchLeaf): string {
  return `patch ${name}`;
}

/** Names the triangles at one kind of place on the edge of a setting on point. */
export function triangleKey(use: TriangleUse): string {
  return `triangle ${use}`;
}

/** Which two strips of a border: those down the sides, or those across the ends. */
export type BorderPair = 'sides' | 'ends';

export function borderKey(border: string, pair: BorderPair): string {
  return `border ${border} | ${pair}`;
}

/** The fabric a role of a block is cut from; a role that was given none keeps its own name, so that nothing is lost. */
export function fabricFor(fabricOf: FabricOf, block: string, role: string): string {
  return fabricOf[block]?.[role] ?? role;
}

/**
 * Gives a letter to every cut of every unit of every block in order, then to what stands between the blocks, then to each
 * border's sides, ends and corners from the inside out, then to the binding. Pieces of blocks share a letter only if they are of one
 * fabric, cut the same way, and equal in every size, and so do pieces of the setting; borders and binding have letters of
 * their own.
 * @param sizes every size of the pattern
 */
export function assignLetters(pattern: Pattern, sizes: readonly LetteredSize[], fabricOf: FabricOf): Letters {
  const letters: Record<string, string> = {};
  const bySignature = new Map<string, string>();
  let next = 0;
  for (const [key, signature] of [...signatures(pattern, sizes, fabricOf), ...patchSignatures(sizes)]) {
    const shared = bySignature.get(signature) ?? letterAt(next++);
    bySignature.set(signature, shared);
    letters[key] = shared;
  }
  const uses = new Set(sizes.flatMap(({ quilt }) => quilt.triangles.map(({ use }) => use)));
  for (const use of uses) letters[triangleKey(use)] = letterAt(next++);
  for (const border of pattern.borders) {
    const pairs: readonly BorderPair[] = border.first === 'sides' ? ['sides', 'ends'] : ['ends', 'sides'];
    for (const pair of pairs) letters[borderKey(border.id, pair)] = letterAt(next++);
    for (const key of patchSignatures(sizes, border.id).keys()) letters[key] = letterAt(next++);
  }
  letters[BINDING_KEY] = letterAt(next);
  return letters;
}

/** What each cut is in every size, block by block, in the order units are sewn. */
function signatures(pattern: Pattern, sizes: readonly LetteredSize[], fabricOf: FabricOf): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { id } of pattern.blocks) {
    sizes.forEach(({ blocks }, size) => {
      for (const { unit, plan } of blocks.find((block) => block.id === id)?.units ?? []) {
        plan.cuts.forEach((cut, index) => {
          const key = cutKey(id, unit.key, index);
          const before = found.get(key) ?? fabricFor(fabricOf, id, cut.role);
          found.set(key, `${before} | ${size}: ${cutSignature(cut, plan.cuts, fabricOf, id)}`);
        });
      }
    });
  }
  return found;
}

/** What each plain piece of the setting, or of one border, is in every size. */
function patchSignatures(sizes: readonly LetteredSize[], border?: string): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  sizes.forEach(({ quilt }, size) => {
    const patches = quilt.patches.filter((patch) => patch.border === border);
    const own = new Map(patches.map((patch) => [patchKey(patch), patch]));
    for (const [key, { fabric, cut }] of own) {
      const sides = [cut.width.value, cut.height.value].sort((a, b) => b - a).join(' by ');
      found.set(key, `${found.get(key) ?? `setting ${fabric}`} | ${size}: ${sides}`);
    }
  });
  return found;
}

function cutSignature(cut: Cut, all: readonly Cut[], fabricOf: FabricOf, block: string): string {
  const sides = [cut.width.value, cut.height.value];
  if (cut.shape !== undefined) return `${sides.join(' by ')} round ${cut.shape}`;
  if (cut.stripSet === undefined) return sides.sort((a, b) => b - a).join(' by ');
  const layers = all.filter((other) => other.stripSet === cut.stripSet);
  return `${sides.join(' by ')} in ${setSignature(layers.map((of) => ({ fabric: fabricFor(fabricOf, block, of.role), cut: of })))}`;
}

/** Without I and O: beside a number they read as 1 and 0. */
const ALPHABET = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** A, B, … Z, AA, AB, … */
function letterAt(index: number): string {
  const last = ALPHABET.charAt(index % ALPHABET.length);
  return index < ALPHABET.length ? last : letterAt(Math.floor(index / ALPHABET.length) - 1) + last;
}

/** Alphabetical, with all single letters before double ones. */
export function compareLetters(a: string, b: string): number {
  return a.length - b.length || (a < b ? -1 : a > b ? 1 : 0);
}
