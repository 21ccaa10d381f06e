import { afterTurn } from '../drawing/turn.ts';
import type { Finding } from '../measure/finding.ts';
import type { Fabric, Pattern } from '../pattern/schema.ts';
import { keepsPrint } from '../piecing/methods/prints.ts';
import type { Piecing } from '../piecing/piecing.ts';
import { leavesOf } from '../piecing/tree.ts';
import type { Quilt } from '../quilt/quilt.ts';
import type { SizedBlock, SizedUnit } from '../quilt/sized.ts';

/** A block without regard to size, with each role's fabric. */
interface PrintedBlock {
  readonly id: string;
  readonly piecing: Piecing;
  readonly fabricOf: Readonly<Record<string, string>>;
}

/** One size as it is laid out. */
interface PrintedSize {
  readonly quilt: Quilt;
  readonly blocks: readonly SizedBlock[];
}

/**
 * Prints that have a direction, and units made in a way that turns them on their side or on their head. Told once for each
 * block, way and fabric, with the ways that keep them upright.
 */
export function fitPrints(
  pattern: Pattern,
  blocks: readonly PrintedBlock[],
  sizes: readonly PrintedSize[],
): readonly Finding[] {
  const directed = pattern.fabrics.filter(({ direction }) => direction !== undefined);
  if (directed.length === 0) return [];
  const found = new Map<string, Finding>();
  for (const { quilt, blocks: sized } of sizes) {
    for (const block of blocks) {
      for (const of of sized.find(({ id }) => id === block.id)?.units ?? []) {
        const turns = turnsOf(of, block, quilt);
        for (const fabric of directed) {
          const key = `${block.id} ${of.method.id} ${fabric.id}`;
          if (found.has(key) || !isCutFrom(of, block, fabric) || isKept(of.method, fabric, turns)) continue;
          found.set(key, finding(of, block, fabric, turns, pattern));
        }
      }
    }
  }
  return [...found.values(), ...aslant(directed, sizes)];
}

/** The quarter turns one unit of a block lies at, over the whole quilt. */
function turnsOf({ unit }: SizedUnit, { id, piecing }: PrintedBlock, quilt: Quilt): ReadonlySet<number> {
  const inBlock = leavesOf(piecing.root).filter((leaf) => leaf.unit === unit.key);
  const lies = quilt.blocks.filter(({ block }) => block === id);
  return new Set(lies.flatMap(({ turn }) => inBlock.map((leaf) => afterTurn(leaf.turn, turn).quarters)));
}

function isCutFrom({ plan }: SizedUnit, { fabricOf }: PrintedBlock, { id }: Fabric): boolean {
  return plan.cuts.some(({ role }) => (fabricOf[role] ?? role) === id);
}

function isKept(method: SizedUnit['method'], { direction }: Fabric, turns: ReadonlySet<number>): boolean {
  return direction === undefined || keepsPrint(method.id, direction, turns);
}

function finding(
  { method, others }: SizedUnit,
  { id }: PrintedBlock,
  fabric: Fabric,
  turns: ReadonlySet<number>,
  pattern: Pattern,
): Finding {
  const better = others.find((other) => isKept(other, fabric, turns));
  const another = 'print that looks alike every way.';
  return {
    level: 'look',
    what: `${fabric.name} is a ${fabric.direction} print, and ${said(method.name)} turn it in block ${id}.`,
    where: { path: `blocks[${pattern.blocks.findIndex((one) => one.id === id)}].methods`, on: id },
    mend:
      better === undefined ? `Take a ${another}` : `Make ${lower(better.name)} (“${better.id}”), or take a ${another}`,
  };
}

/** A name with commas in it, within a sentence. */
function said(name: string): string {
  return `${lower(name)}${name.includes(',') ? ',' : ''}`;
}

function lower(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

/** Blocks that stand on their corners lay every print aslant. */
function aslant(directed: readonly Fabric[], sizes: readonly PrintedSize[]): readonly Finding[] {
  if (!sizes.some(({ quilt }) => quilt.blocks.some(({ tilt }) => tilt !== undefined && tilt !== 0))) return [];
  return directed.map(({ name, direction }) => ({
    level: 'note',
    what: `${name} is a ${direction} print, and blocks on point lay it aslant.`,
    where: { path: 'setting.kind' },
    mend: 'It is cut so that it stands upright in the blocks.',
  }));
}
