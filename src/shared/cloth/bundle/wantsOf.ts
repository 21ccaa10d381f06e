import { longer } from '../../measure/inches.ts';
import type { Bundle, Pattern } from '../../pattern/schema.ts';
import { keyed } from '../../piecing/distinct.ts';
import type { Piecing, UnitKey } from '../../piecing/piecing.ts';
import { loosePatchesOf, unitsOf } from '../../piecing/seamTree.ts';
import { leavesOf } from '../../piecing/tree.ts';
import type { BlockLeaf, Quilt } from '../../quilt/quilt.ts';
import type { SizedBlock, SizedUnit } from '../../quilt/sized.ts';
import type { Value } from '../../recipe/schema.ts';
import type { Cloth, PieceLine } from '../cloth.ts';
import { BINDING_KEY, cutKey, type FabricOf, fabricFor, type Letters } from '../letters.ts';
import { meetings, type OnEdge, patchesOnEdges } from './edges.ts';
import { isBundled, whyOutside } from './outside.ts';
import type { Group, LongWant, StripCut, Wants } from './wants.ts';

/** One size that is to be cut from a bundle. */
export interface BundledSize {
  readonly pattern: Pattern;
  readonly bundle: Bundle;
  readonly quilt: Quilt;
  readonly blocks: readonly SizedBlock[];
  readonly piecings: ReadonlyMap<string, Piecing>;
  readonly fabricOf: FabricOf;
  readonly letters: Letters;
  readonly cloth: Cloth;
}

/**
 * What a size wants of its bundle. Pieces are gathered into groups that come from one strip: every piece of a plain patch or a log by
 * itself, the pieces of one fabric in one unit, and all pieces of a fabric that must match within a block. Borders, binding
 * and strip sets are wanted as strips; what is wider than a strip is left to other cloth.
 */
export function wantsOf(size: BundledSize): Wants {
  const groups = new Map<string, Group>();
  const patchGroups = new Map<string, number>();
  const turned = new Map<string, readonly OnEdge[]>();
  const edges = size.quilt.blocks.map((leaf) => edgesOf(leaf, size, turned));
  size.quilt.blocks.forEach((leaf, place) => {
    gather(leaf, place, size, groups, patchGroups);
  });
  const met = meetings(size.quilt.blocks);
  const touching = met.flatMap(({ a, b, sideOfA, sideOfB }) => {
    const ours = (edges[a] ?? []).filter(({ side }) => side === sideOfA);
    const theirs = (edges[b] ?? []).filter(({ side }) => side === sideOfB);
    return ours.flatMap((one) =>
      theirs
        .filter((two) => Math.min(one.to, two.to) - Math.max(one.from, two.from) > 1e-6)
        .flatMap((two): (readonly [number, number])[] => {
          const [first, second] = [patchGroups.get(`${a} ${one.patch}`), patchGroups.get(`${b} ${two.patch}`)];
          return first === undefined || second === undefined ? [] : [[first, second]];
        }),
    );
  });
  const lines = size.cloth.pieces.filter((line) => line.cutAs !== 'piece');
  return {
    groups: [...groups.values()],
    long: lines.filter((line) => whyOutside(line, size.bundle) === null).map((line) => longWant(line, size)),
    outside: size.cloth.pieces.flatMap((line) => {
      const why = whyOutside(line, size.bundle);
      return why === null ? [] : [{ letter: line.letter, fabric: line.fabric, why }];
    }),
    touching,
    neighbours: met.map(({ a, b }) => [a, b]),
  };
}

function edgesOf(leaf: BlockLeaf, { piecings }: BundledSize, known: Map<string, readonly OnEdge[]>): readonly OnEdge[] {
  const key = `${leaf.block} ${leaf.turn.quarters} ${leaf.turn.mirrored}`;
  const piecing = piecings.get(leaf.block);
  const found = known.get(key) ?? (piecing === undefined ? [] : patchesOnEdges(piecing.drawing, leaf.turn));
  known.set(key, found);
  return found;
}

/** Adds the groups of one block of the quilt. */
function gather(
  leaf: BlockLeaf,
  place: number,
  size: BundledSize,
  groups: Map<string, Group>,
  patchGroups: Map<string, number>,
): void {
  const piecing = size.piecings.get(leaf.block);
  const sized = size.blocks.find(({ id }) => id === leaf.block);
  if (piecing === undefined || sized === undefined) return;
  for (const { own, patches, spot } of unitsMade(piecing, sized)) {
    own.plan.cuts.forEach((cut, at) => {
      const fabric = fabricFor(size.fabricOf, leaf.block, cut.role);
      const made = stripCut(own, at, size.letters[cutKey(leaf.block, own.unit.key, at)] ?? '', size.bundle);
      if (made === null || cut.stripSet !== undefined || !isBundled(fabric, size.bundle)) return;
      const matched = size.bundle.match.includes(fabric);
      const key = matched ? `${place} ${fabric}` : keyOf(own, place, spot, fabric);
      const group = groups.get(key) ?? {
        id: groups.size,
        place,
        fabric,
        value: fabricValue(fabric, size),
        cuts: [],
        length: 0,
      };
      groups.set(key, withCut(group, made, size.bundle));
      for (const patch of patches) {
        if (piecing.drawing.patches[patch]?.role === cut.role) patchGroups.set(`${place} ${patch}`, group.id);
      }
    });
  }
}

/** A unit that is made for a block: which of the block's patches it becomes, and a name for its place. */
interface UnitMade {
  readonly own: SizedUnit;
  readonly patches: readonly number[];
  readonly spot: string;
}

/** Every unit made for one block: those of its tree, and those that are made first for a pieced one. */
function unitsMade({ root, units }: Piecing, { units: sizes }: SizedBlock): readonly UnitMade[] {
  const sizeOf = (key: UnitKey) => sizes.filter(({ unit }) => unit.key === key);
  return leavesOf(root).flatMap((leaf, index) => {
    const unit = units.find(({ key }) => key === leaf.unit);
    return sizeOf(leaf.unit).flatMap((own): readonly UnitMade[] => {
      const whole = { own, patches: leaf.patches, spot: `${index}` };
      if (own.plan.takes === undefined || unit?.kind !== 'pieced') return [whole];
      const patches = (of: readonly number[]) => of.map((patch) => leaf.patches[patch] as number);
      const inside = unitsOf(unit.seams).flatMap((made, i) =>
        sizeOf(keyed(made.shape).key).map((its) => ({
          own: its,
          patches: patches(made.patches),
          spot: `${index}.${i}`,
        })),
      );
      return [{ ...whole, patches: patches(loosePatchesOf(unit.seams)) }, ...inside];
    });
  });
}

/** Units made several at a time share their pieces within a block; every other unit has its own. */
function keyOf({ plan, unit }: SizedUnit, place: number, spot: string, fabric: string): string {
  return plan.yield === 1 ? `${place} ${spot} ${fabric}` : `${place} ${unit.key} ${fabric}`;
}

function fabricValue(fabric: string, { pattern }: BundledSize): Value {
  return pattern.fabrics.find(({ id }) => id === fabric)?.value ?? 'medium';
}

/** How one cut of one unit lies in a strip; null when it is too wide or too long for one. */
function stripCut({ plan }: SizedUnit, at: number, letter: string, bundle: Bundle): StripCut | null {
  const cut = plan.cuts[at];
  if (cut === undefined) return null;
  const [short, long] = [cut.width.value, cut.height.value].sort((a, b) => a - b) as [number, number];
  if (longer(short, bundle.strip) || longer(long, bundle.length)) return null;
  // A piece that may lie across the strip takes no more of it than it must.
  const across = longer(long, bundle.strip) ? short : long;
  return { letter, length: across === long ? short : long, across, count: cut.count / plan.yield };
}

function withCut(group: Group, cut: StripCut, bundle: Bundle): Group {
  const before = group.cuts.find((one) => one.letter === cut.letter && one.length === cut.length);
  const cuts =
    before === undefined
      ? [...group.cuts, cut]
      : group.cuts.map((one) => (one === before ? { ...one, count: one.count + cut.count } : one));
  return { ...group, cuts, length: cuts.reduce((sum, one) => sum + lengthOf(one, bundle), 0) };
}

/** What a cut takes of a strip: low pieces are cut in as many rows as there is room for. */
function lengthOf({ length, across, count }: StripCut, { strip }: Bundle): number {
  const rows = Math.max(1, Math.floor(strip / across + 1e-9));
  return Math.ceil(Math.ceil(count - 1e-9) / rows) * length;
}

/** "Quay border, ends"; "strips for four-patches in blocks A and B". */
function wordsOf({ use }: PieceLine): string {
  const blocks = [...new Set(use.flatMap(({ block }) => block ?? []))];
  const first = use[0]?.words ?? '';
  if (blocks.length === 0) return [...new Set(use.map(({ words }) => words))].join(' and ');
  // "Block A, four-patches, strip": what lies between the block and the piece names the unit.
  const unit = first.split(', ').slice(1, -1).join(', ');
  const where = `${blocks.length === 1 ? 'block' : 'blocks'} ${listed(blocks)}`;
  return `Strips for ${unit === '' ? 'strip sets' : unit} in ${where}`;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}

/** Strips that are joined, or whole ones: served in the order of the chart, the binding last. */
function longWant(line: PieceLine, size: BundledSize): LongWant {
  const { letter, fabric } = line;
  const words = wordsOf(line);
  const common = { letter, fabric, words, value: fabricValue(fabric, size) };
  if (line.cutAs === 'strip-set') return { ...common, strips: line.count.value, reach: 0, join: 0 };
  if (!line.use.some(({ unit }) => unit === BINDING_KEY)) {
    const reach = line.count.value * line.width.value;
    return { ...common, strips: null, reach, join: 2 * size.pattern.house.seam };
  }
  // Round the quilt, and its two ends joined like the others: on the diagonal, a strip's width each.
  const { width, height } = size.quilt.finished;
  const { strip } = size.pattern.binding;
  return { ...common, strips: null, reach: 2 * (width.value + height.value) + 2 * strip, join: strip };
}
