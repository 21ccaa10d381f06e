import { clothFor } from '../cloth/clothFor.ts';
import type { FabricOf, Letters } from '../cloth/letters.ts';
import { cutOffFindings } from '../fit/cutOff.ts';
import { fitBlock } from '../fit/fitBlock.ts';
import { fitCloth } from '../fit/fitCloth.ts';
import { fitQuilt } from '../fit/fitQuilt.ts';
import type { Finding, Maybe } from '../measure/finding.ts';
import { accept } from '../measure/finding.ts';
import { rulerOn } from '../measure/ruler.ts';
import type { Pattern, Size } from '../pattern/schema.ts';
import type { Edged } from '../pressing/ends.ts';
import { pressQuilt } from '../pressing/pressQuilt.ts';
import { layOut } from '../quilt/layOut.ts';
import type { Quilt } from '../quilt/quilt.ts';
import { scrappyIn } from '../quilt/scraps.ts';
import type { SizedBlock } from '../quilt/sized.ts';
import { madeTogether } from './madeTogether.ts';
import { sizeBlock } from './sizeBlock.ts';
import type { WorkedBlock, WorkedSize } from './workedOut.ts';

/** One size laid out and its blocks sized: as far as it goes before pieces have letters. */
export interface LaidSize {
  readonly size: Size;
  readonly quilt: Quilt;
  /** The blocks this size takes, and the same blocks at its scale. */
  readonly used: readonly WorkedBlock[];
  readonly blocks: readonly SizedBlock[];
}

/** One size laid out, or why it cannot be. */
export function laySize(pattern: Pattern, size: Size, blocks: readonly WorkedBlock[]): Maybe<LaidSize> {
  const laid = layOut(pattern, size, new Map(blocks.map(({ id, piecing }) => [id, piecing])), pathOf(pattern, size));
  if (!laid.ok) return laid;
  const quilt = laid.value;
  const scrapped = { ...quilt, ...scrappyIn(pattern.fabrics) };
  const used = blocks.filter(({ id }) => (quilt.counts[id] ?? 0) > 0);
  return accept({ size, quilt: scrapped, used, blocks: used.map((block) => sizeBlock(block, pattern, quilt)) });
}

function pathOf(pattern: Pattern, size: Size): string {
  return `sizes[${pattern.sizes.indexOf(size)}]`;
}

/**
 * One size worked out.
 * @param letters the same in every size, so given once all sizes are laid out
 */
export function workSize(pattern: Pattern, laid: LaidSize, fabricOf: FabricOf, letters: Letters): WorkedSize {
  const { size, quilt, used } = laid;
  const blocks = madeTogether(laid.blocks, letters);
  const cloth = clothFor({ quilt, blocks, fabricOf, pattern, letters });
  const path = pathOf(pattern, size);
  const sewn = fitSize(pattern, size, quilt, used, blocks, path);
  const findings = [...sewn.findings, ...fitCloth(cloth, pattern, size, path)];
  return { size, quilt, blocks, pressing: pressSize(laid), cloth, points: sewn.points, findings };
}

function fitSize(
  pattern: Pattern,
  size: Size,
  quilt: Quilt,
  used: readonly WorkedBlock[],
  sized: readonly SizedBlock[],
  path: string,
): { readonly findings: readonly Finding[]; readonly points: number } {
  const { seam, step } = pattern.house;
  const say = rulerOn(step).length;
  const fitted = used.map((block, i) => {
    const at = sized[i] as SizedBlock;
    const named = { letter: block.id, size: size.name, path: `${path}.block`, say };
    return { id: block.id, count: at.count, ...fitBlock(block.piecing, at.units, at.grid, seam, named) };
  });
  const whole = fitQuilt(pattern, size, quilt, new Map(fitted.map(({ id, up }) => [id, up.sewn])));
  const drawings = new Map(used.map(({ id, piecing }) => [id, piecing.drawing]));
  const cutOff = cutOffFindings(quilt, drawings, seam, size, say);
  const inBlocks = fitted.reduce((total, { up, count }) => total + up.points * count, 0);
  return {
    findings: [...fitted.flatMap(({ findings }) => findings), ...whole.findings, ...cutOff],
    points: inBlocks + whole.up.points,
  };
}

/** The pressing of the whole top. */
export function pressSize({ quilt, used, blocks }: LaidSize): WorkedSize['pressing'] {
  const edged = used.map((block, i) => [block.id, inInches(block.edged, (blocks[i] as SizedBlock).grid)] as const);
  return pressQuilt(quilt, new Map(edged));
}

function inInches(edged: Edged, grid: number): Edged {
  const scaled = (ends: Edged['ends']['top']) => ends.map((end) => ({ at: end.at * grid, press: end.press }));
  const { top, right, bottom, left } = edged.ends;
  const ends = { top: scaled(top), right: scaled(right), bottom: scaled(bottom), left: scaled(left) };
  return { width: edged.width * grid, height: edged.height * grid, ends };
}
