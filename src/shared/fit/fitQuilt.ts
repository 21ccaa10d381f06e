import type { Finding } from '../measure/finding.ts';
import { type Inches, longer } from '../measure/inches.ts';
import { rulerOn } from '../measure/ruler.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import { childrenOf, isLeaf } from '../piecing/tree.ts';
import { closingsOf } from '../quilt/find/closingsOf.ts';
import { bestClosing } from '../quilt/find/closingWords.ts';
import type { BlockLeaf, PatchLeaf, Quilt, QuiltLeaf, QuiltPart, StripLeaf } from '../quilt/quilt.ts';
import { cutSewn } from './cutSewn.ts';
import { levelOf } from './level.ts';
import { plainSewn, type Sewn, turnSewn } from './sewn.ts';
import { type SewnOnPoint, sewOnPoint } from './sewOnPoint.ts';
import { type Misfit, type SewnUp, sewUp } from './sewUp.ts';

/** A quilt top sewn on paper. */
export interface FittedQuilt {
  readonly up: SewnUp;
  readonly findings: readonly Finding[];
}

/**
 * Sews a whole top from its blocks as they come out and its strips as they are cut, and says where it does not fit.
 * @param blocks each block as sewn at this size, by letter
 */
export function fitQuilt(pattern: Pattern, size: Size, quilt: Quilt, blocks: ReadonlyMap<string, Sewn>): FittedQuilt {
  const { seam } = pattern.house;
  const measure = measureLeaves(blocks, seam);
  const onPoint: SewnOnPoint[] = [];
  const up = sewUp<QuiltLeaf>(quilt.root, (leaf) => {
    if (leaf.kind === 'strip') return stripSewn(leaf, seam);
    if (leaf.kind !== 'on-point') return measure(leaf);
    const sewn = sewOnPoint(leaf, measure, seam);
    onPoint.push(sewn);
    return sewn.sewn;
  });
  const inRows = onPoint.flatMap(({ misfits }) => misfits);
  const whole: SewnUp = {
    sewn: up.sewn,
    misfits: [...inRows, ...up.misfits],
    points: onPoint.reduce((sum, { points }) => sum + points, up.points),
    seams: onPoint.reduce((sum, { seams }) => sum + seams, up.seams),
  };
  const triangles = onPoint.flatMap((sewn) => sewn.triangles);
  const findings = findingsOf(whole.misfits, pattern, size, quilt);
  return {
    up: whole,
    findings: [...findings, ...triangleFindings(triangles, size, rulerOn(pattern.house.step).length)],
  };
}

/** What a block or a plain piece of the setting measures as it is made. */
function measureLeaves(blocks: ReadonlyMap<string, Sewn>, seam: Inches): (leaf: BlockLeaf | PatchLeaf) => Sewn {
  const turned = new Map<string, Sewn>();
  return (leaf) => {
    if (leaf.kind === 'patch') return patchSewn(leaf, seam);
    const key = `${leaf.block} ${leaf.turn.quarters} ${leaf.turn.mirrored} ${leaf.part?.from} ${leaf.part?.to}`;
    const known = turned.get(key);
    if (known !== undefined) return known;
    const sewn = blocks.get(leaf.block);
    if (sewn === undefined) throw new RangeError(`No block “${leaf.block}” at this size`);
    const whole = turnSewn(sewn, leaf.turn);
    const lying = leaf.part === undefined ? whole : cutSewn(whole, leaf.part);
    turned.set(key, lying);
    return lying;
  };
}

function stripSewn(strip: StripLeaf, seam: Inches): Sewn {
  const upright = strip.side === 'left' || strip.side === 'right';
  // A mitred strip is cut to spare and cut off at the seam; only one that is too short shows.
  const cut = strip.cutLength.value - 2 * seam;
  const length = strip.mitre === undefined ? cut : Math.min(cut, upright ? strip.box.height : strip.box.width);
  const width = strip.cutWidth.value - 2 * seam;
  const design = { width: strip.box.width, height: strip.box.height };
  return upright ? plainSewn(width, length, design) : plainSewn(length, width, design);
}

function patchSewn({ cut, box }: PatchLeaf, seam: Inches): Sewn {
  const design = { width: box.width, height: box.height };
  return plainSewn(cut.width.value - 2 * seam, cut.height.value - 2 * seam, design);
}

type Say = (length: Inches) => string;

/** What a misfit is told of: a border, the sashing, or the rows of blocks. */
type Subject =
  | { readonly kind: 'border'; readonly id: string }
  | { readonly kind: 'sashing' }
  | { readonly kind: 'rows' };

function subjectOf(leaf: QuiltLeaf | undefined): Subject {
  if (leaf?.kind === 'patch' && leaf.border !== undefined) return { kind: 'border', id: leaf.border };
  if (leaf?.kind === 'strip') return { kind: 'border', id: leaf.border };
  if (leaf?.kind === 'block' && leaf.border !== undefined) return { kind: 'border', id: leaf.border };
  return leaf?.kind === 'patch' && leaf.use !== 'filler' ? { kind: 'sashing' } : { kind: 'rows' };
}

function findingsOf(misfits: readonly Misfit[], pattern: Pattern, size: Size, quilt: Quilt): readonly Finding[] {
  const leaves = leavesByBox(quilt.root);
  const say = rulerOn(pattern.house.step).length;
  const told = new Map<string, { readonly subject: Subject; readonly misfits: Misfit[] }>();
  for (const misfit of misfits) {
    const subject = subjectOf(leaves.get(misfit.box));
    const key = subject.kind === 'border' ? subject.id : ` ${subject.kind}`;
    const before = told.get(key);
    if (before === undefined) told.set(key, { subject, misfits: [misfit] });
    else before.misfits.push(misfit);
  }
  return [...told.values()].map(({ subject, misfits: some }) => {
    if (subject.kind === 'border') return borderFinding(subject.id, some, pattern, size, quilt);
    return subject.kind === 'sashing' ? sashingFinding(some, size, say) : rowFinding(some, size, say);
  });
}

/** For every part of a tree the leaf it is told by, under the part's own box: the first of its leaves. */
function leavesByBox(root: QuiltPart): ReadonlyMap<Misfit['box'], QuiltLeaf> {
  const found = new Map<Misfit['box'], QuiltLeaf>();
  const walk = (part: QuiltPart): QuiltLeaf | undefined => {
    if (isLeaf<QuiltLeaf>(part)) {
      found.set(part.box, part);
      return part;
    }
    const leaves = childrenOf<QuiltLeaf>(part).map(walk);
    const [first] = leaves;
    if (first !== undefined && !found.has(part.box)) found.set(part.box, first);
    return first;
  };
  walk(root);
  return found;
}

function worstOf(misfits: readonly Misfit[]): Misfit {
  return misfits.reduce((worst, misfit) => (Math.abs(misfit.by) > Math.abs(worst.by) ? misfit : worst));
}

const MEND = 'Choose a block size whose units fall on the ruler’s marks';

function borderFinding(id: string, misfits: readonly Misfit[], pattern: Pattern, size: Size, quilt: Quilt): Finding {
  const index = pattern.borders.findIndex((border) => border.id === id);
  const name = pattern.borders[index]?.name ?? id;
  const { by, box } = worstOf(misfits);
  const say = rulerOn(pattern.house.step).length;
  const sides = misfits.length === 1 ? 'on one side' : `on ${misfits.length} sides`;
  const what = `${name} is ${say(Math.abs(by))} ${by > 0 ? 'short' : 'long'} ${sides} in ${size.name}.`;
  const where = { path: `borders[${index}]`, size: size.name, on: 'quilt', box };
  const { setting, house } = pattern;
  const exact =
    setting.kind === 'on-point' && setting.triangles.fit === 'exact' && !longer(Math.abs(by), house.step / 2);
  const closings = closingsOf(quilt, id, house);
  const closing = closings === null || closings.closes ? null : bestClosing(closings, say);
  if (closing !== null) return { level: levelOf(by), what, where, by, mend: closing };
  const mend = exact
    ? 'Let the triangles be rounded up: the setting then ends on a mark of the ruler.'
    : `${MEND}, or cut the border to the quilt’s own measure.`;
  return { level: levelOf(by), what, where, by, mend };
}

function sashingFinding(misfits: readonly Misfit[], size: Size, say: Say): Finding {
  const { by, box, kind } = worstOf(misfits);
  const amount = say(Math.abs(by));
  const many = misfits.length === 1 ? 'one seam' : `${misfits.length} seams`;
  const what =
    kind === 'length'
      ? `The sashing is ${amount} ${by > 0 ? 'short' : 'long'} at ${many} in ${size.name}.`
      : `Sashings miss each other by ${amount} at ${many} in ${size.name}.`;
  const where = { path: 'setting.sashing', size: size.name, on: 'quilt', box };
  return { level: levelOf(by), what, where, by, mend: `${MEND}, and a sashing width that does.` };
}

function rowFinding(misfits: readonly Misfit[], size: Size, say: Say): Finding {
  const { by, box, kind } = worstOf(misfits);
  const amount = say(Math.abs(by));
  const where = { path: 'setting', size: size.name, on: 'quilt', box };
  const what =
    kind === 'length'
      ? `Two rows of blocks differ by ${amount} in ${size.name}.`
      : `Seams of neighbouring blocks miss each other by ${amount} in ${size.name}.`;
  return { level: levelOf(by), what, where, by };
}

function triangleFindings(misfits: readonly Misfit[], size: Size, say: Say): readonly Finding[] {
  if (misfits.length === 0) return [];
  const { by, box } = worstOf(misfits);
  const what = `The triangles at the edge are ${say(by)} short in ${size.name}.`;
  const where = { path: 'setting.triangles', size: size.name, on: 'quilt', box };
  return [{ level: levelOf(by), what, where, by, mend: 'Let them be rounded up, or float.' }];
}
