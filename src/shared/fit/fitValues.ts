import type { Drawing } from '../drawing/drawing.ts';
import type { Finding } from '../measure/finding.ts';
import type { Fabric, Pattern } from '../pattern/schema.ts';
import type { Value } from '../recipe/schema.ts';
import { DARK_BELOW, LIGHT_FROM, lightnessOf } from './lightness.ts';

/** Two fabrics nearer in lightness than this blur where they meet, at the distance a quilt is looked at (common practice). */
const BLUR = 12;
/** A fabric may be this far beyond its value's limits before anything is said. */
const SLACK = 8;

/** One block's drawing, with each role's fabric. */
export interface ValuedBlock {
  readonly id: string;
  readonly drawing: Drawing;
  readonly fabricOf: Readonly<Record<string, string>>;
}

/** Two fabrics that lie side by side in a block. */
export interface Neighbours {
  readonly block: string;
  readonly a: string;
  readonly b: string;
  /** Difference of their lightness, 0 to 100. */
  readonly contrast: number;
}

/**
 * Looks at the fabrics without their colour: is each as light or dark as it is said to be, and do light and dark that lie side by
 * side in a block stay apart? Scraps are looked at one by one.
 */
export function fitValues(pattern: Pattern, blocks: readonly ValuedBlock[]): readonly Finding[] {
  return [...pattern.fabrics.flatMap(valueFindings), ...blurFindings(pattern, neighboursIn(pattern, blocks))];
}

/** Every pair of different fabrics that share an edge in some block, the least contrast first; each pair once a block. */
export function neighboursIn(pattern: Pattern, blocks: readonly ValuedBlock[]): readonly Neighbours[] {
  const fabrics = new Map(pattern.fabrics.map((fabric) => [fabric.id, fabric]));
  const found = blocks.flatMap(({ id, drawing, fabricOf }) => {
    const pairs = new Map<string, Neighbours>();
    for (const [one, two] of rolesSideBySide(drawing)) {
      const [a, b] = [fabricOf[one] ?? one, fabricOf[two] ?? two].sort() as [string, string];
      const [first, second] = [fabrics.get(a), fabrics.get(b)];
      if (a === b || first === undefined || second === undefined) continue;
      pairs.set(`${a} ${b}`, { block: id, a, b, contrast: contrastOf(first, second) });
    }
    return [...pairs.values()];
  });
  return found.sort((x, y) => x.contrast - y.contrast);
}

/** Roles of patches that share an edge: two patches that both have it, one each way round. */
function rolesSideBySide({ patches }: Drawing): readonly (readonly [string, string])[] {
  const edges = new Map<string, string>();
  for (const { outline, role } of patches) {
    outline.forEach((point, i) => {
      edges.set(`${point} ${outline[(i + 1) % outline.length]}`, role);
    });
  }
  const found = new Map<string, readonly [string, string]>();
  for (const [edge, role] of edges) {
    const other = edges.get(edge.split(' ').reverse().join(' '));
    if (other !== undefined && other !== role) found.set([role, other].sort().join(' | '), [role, other]);
  }
  return [...found.values()];
}

/** The least difference of lightness that two fabrics show, over all their scraps. */
function contrastOf(a: Fabric, b: Fabric): number {
  const [ours, theirs] = [lightnessesOf(a), lightnessesOf(b)];
  return Math.min(...ours.flatMap((one) => theirs.map((two) => Math.abs(one - two))));
}

function lightnessesOf({ colour, scraps }: Fabric): readonly number[] {
  return scraps === undefined ? [lightnessOf(colour)] : scraps.map((scrap) => lightnessOf(scrap.colour));
}

function valueFindings(fabric: Fabric, index: number): readonly Finding[] {
  const off = lightnessesOf(fabric).flatMap((lightness) => {
    const reads = readsAs(lightness, fabric.value);
    return reads === null ? [] : [{ lightness, reads }];
  });
  const [first] = off;
  if (first === undefined) return [];
  const which = fabric.scraps === undefined ? fabric.name : `A scrap of ${fabric.name}`;
  const what = `${which} is said to be ${fabric.value} and reads as ${first.reads}: its lightness is ${Math.round(first.lightness)} of 100.`;
  return [{ level: 'look', what, where: { path: `fabrics[${index}].value` }, mend: 'Change its value or its colour.' }];
}

/** What a lightness reads as, when that is clearly not this value. */
function readsAs(lightness: number, value: Value): Value | null {
  if (value === 'light') return lightness < LIGHT_FROM - SLACK ? (lightness < DARK_BELOW ? 'dark' : 'medium') : null;
  if (value === 'dark') return lightness > DARK_BELOW + SLACK ? (lightness >= LIGHT_FROM ? 'light' : 'medium') : null;
  if (lightness < DARK_BELOW - SLACK) return 'dark';
  return lightness > LIGHT_FROM + SLACK ? 'light' : null;
}

/** Fabrics of two values that lie side by side and yet look alike. Each pair is told once, with all its blocks. */
function blurFindings({ fabrics }: Pattern, neighbours: readonly Neighbours[]): readonly Finding[] {
  const byId = new Map(fabrics.map((fabric, index) => [fabric.id, { fabric, index }]));
  const told = new Map<string, Neighbours[]>();
  for (const pair of neighbours) {
    const [a, b] = [byId.get(pair.a)?.fabric, byId.get(pair.b)?.fabric];
    if (a === undefined || b === undefined || a.value === b.value || pair.contrast >= BLUR) continue;
    told.set(`${pair.a} ${pair.b}`, [...(told.get(`${pair.a} ${pair.b}`) ?? []), pair]);
  }
  return [...told.values()].map((pairs): Finding => {
    const [{ a, b, contrast }] = pairs as [Neighbours, ...Neighbours[]];
    const [one, two] = [byId.get(a), byId.get(b)] as [
      { fabric: Fabric; index: number },
      { fabric: Fabric; index: number },
    ];
    const blocks = pairs.map(({ block }) => block).join(', ');
    const inBlocks = pairs.length === 1 ? `block ${blocks}` : `blocks ${blocks}`;
    const values = `${one.fabric.name} (${one.fabric.value}) and ${two.fabric.name} (${two.fabric.value})`;
    const what = `${values} lie side by side in ${inBlocks} and blur: they differ by ${Math.round(contrast)} of 100 in lightness.`;
    return {
      level: 'look',
      what,
      where: { path: `fabrics[${one.index}].colour` },
      mend: 'Make one lighter or the other darker.',
    };
  });
}
