import type { Finding } from '../measure/finding.ts';
import type { Inches } from '../measure/inches.ts';
import { CENTIMETRE, type Units } from '../measure/metric.ts';
import { setRuler } from '../pattern/edits/ruler.ts';
import type { Pattern } from '../pattern/schema.ts';
import { isRulerFriendly } from '../piecing/rulerSizes.ts';
import { settingBlocks } from './find/candidates.ts';
import type { WorkedBlock, WorkedOut } from './workedOut.ts';
import { workOut } from './workOut.ts';

/** What `setRuler` takes: the ruler, and for each size the nearest block whose patches all fall on its marks. */
export interface RulerChange {
  readonly units: Units;
  readonly blocks: Readonly<Record<string, Inches>>;
}

/** How far a block may grow or shrink to fall on the ruler, as a share of itself. */
const FURTHEST = 0.3;

/** Half centimetres or eighths for every patch come first, then the finer marks of the ruler. */
const MARKS: Readonly<Record<Units, readonly Inches[]>> = {
  inches: [1 / 4, 1 / 8],
  centimetres: [CENTIMETRE / 2, CENTIMETRE / 10],
};

const ROUND: Readonly<Record<Units, Inches>> = { inches: 1 / 2, centimetres: CENTIMETRE };

/** Finds the blocks of every size on another ruler; a size is left out for which there is none near. */
export function rulerChange(pattern: Pattern, blocks: readonly WorkedBlock[], units: Units): RulerChange {
  const own = settingBlocks(pattern, blocks);
  const found = pattern.sizes.flatMap(({ id, block }) => {
    const widths = widthsNear(block, ROUND[units]);
    const on = (mark: Inches) =>
      widths.find((width) => own.every(({ piecing }) => isRulerFriendly(piecing, width, mark)));
    const width = MARKS[units].map(on).find((one) => one !== undefined);
    return width === undefined ? [] : [[id, width] as const];
  });
  return { units, blocks: Object.fromEntries(found) };
}

/** Round widths, the nearest first. */
function widthsNear(block: Inches, round: Inches): readonly Inches[] {
  const [first, last] = [Math.ceil((block * (1 - FURTHEST)) / round), Math.floor((block * (1 + FURTHEST)) / round)];
  const all = Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * round);
  return all.sort((a, b) => Math.abs(a - block) - Math.abs(b - block));
}

/** A measure before and after, inches. */
export interface Becomes {
  readonly name: string;
  readonly was: Inches;
  readonly now: Inches;
}

/** What another ruler would make of a pattern, for a designer to read before she takes it. */
export interface RulerPreview {
  readonly change: RulerChange;
  readonly sizes: readonly {
    readonly name: string;
    readonly block: Omit<Becomes, 'name'>;
    /** Finished; left out where the size cannot be laid out. */
    readonly width?: Omit<Becomes, 'name'>;
    readonly height?: Omit<Becomes, 'name'>;
  }[];
  /** Seam, cloth, sashing, borders and finishing. */
  readonly lengths: readonly Becomes[];
  /** What would not fit, or not as well, on the new ruler. */
  readonly findings: readonly Finding[];
}

/** Finds the pattern on another ruler and says what of it becomes what; nothing is changed. */
export function rulerPreview(pattern: Pattern, units: Units): RulerPreview {
  const before = workOut(pattern);
  const change = rulerChange(pattern, before.blocks, units);
  const next = setRuler.apply(pattern, change);
  const after = workOut(next);
  const finished = (worked: WorkedOut, id: string) => worked.sizes.find(({ size }) => size.id === id)?.quilt.finished;
  const sizes = pattern.sizes.map(({ id, name, block }, i) => {
    const [was, now] = [finished(before, id), finished(after, id)];
    const own = { name, block: { was: block, now: next.sizes[i]?.block ?? block } };
    if (was === undefined || now === undefined) return own;
    const both = (side: 'width' | 'height') => ({ was: was[side].value, now: now[side].value });
    return { ...own, width: both('width'), height: both('height') };
  });
  const known = new Set(before.findings.map(({ what }) => what));
  const findings = after.findings.filter(({ what, level }) => level !== 'note' && !known.has(what));
  return { change, sizes, lengths: lengthsOf(pattern, next), findings };
}

function lengthsOf(before: Pattern, after: Pattern): readonly Becomes[] {
  const of = (pattern: Pattern): readonly (readonly [name: string, length: Inches])[] => [
    ['Seam', pattern.house.seam],
    ['Usable width of cloth', pattern.house.usableWidth],
    ...(pattern.setting.sashing?.strips ?? []).map(({ width }) => ['Sashing', width] as const),
    ...pattern.borders.map(({ name, width }) => [name, width] as const),
    ['Binding strips', pattern.binding.strip],
    ['Backing beyond each side', pattern.backing.beyond],
  ];
  const now = of(after);
  return of(before).map(([name, was], i) => ({ name, was, now: now[i]?.[1] ?? was }));
}
