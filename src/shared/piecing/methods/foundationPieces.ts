import type { Inches } from '../../measure/inches.ts';
import { given, rounded } from '../../measure/traced.ts';
import { type Work, workOf } from '../allowance/work.ts';
import { type LaidPiece, laidPiece } from '../foundation/laidPiece.ts';
import { type FoundationArea, type FoundationPaper, papersOf } from '../foundation/paper.ts';
import type { FoundationPlan } from '../foundation/sections.ts';
import type { Cut, Scale } from '../method.ts';
import type { Unit } from '../piecing.ts';

/** Inches a piece is cut larger on every side, when the house says nothing else (common practice). */
const USUAL_SPARE = 1 / 4;

/** One line of the cut list, and the areas it is for. */
export interface PaperPieces {
  readonly cut: Cut;
  readonly areas: readonly PaperPiece[];
}

export interface PaperPiece {
  readonly paper: FoundationPaper;
  readonly area: FoundationArea;
  readonly laid: LaidPiece;
}

/** The pieces of a unit; those that are cut alike at every scale are one line. */
export function cutPieces(
  unit: Unit,
  plan: FoundationPlan,
  papers: readonly FoundationPaper[],
  scale: Scale,
): readonly PaperPieces[] {
  const spare = (scale.oversize ?? 0) > 0 ? (scale.oversize as Inches) : USUAL_SPARE;
  const alike = likenessOf(unit, plan);
  const lines = new Map<string, PaperPieces>();
  papers.forEach((paper, p) => {
    paper.areas.forEach((area, a) => {
      if (area.role === null) return;
      const laid = laidPiece(area, scale.seam, spare);
      const key = `${area.role} ${alike(p, a)}`;
      const before = lines.get(key)?.areas ?? [];
      lines.set(key, lineOf(area.role, [...before, { paper, area, laid }], scale));
    });
  });
  return [...lines.values()];
}

function lineOf(role: string, areas: readonly PaperPiece[], scale: Scale): PaperPieces {
  const [{ laid }] = areas as readonly [PaperPiece];
  const up = (length: Inches) => rounded(given(length, 'area, its seams and some to spare'), scale.step, 'up');
  const use = `for ${areas.map(({ paper, area }) => `${paper.letter}${area.name}`).join(', ')}`;
  const cut = { role, width: up(laid.width), height: up(laid.depth), count: areas.length, patches: 1, use };
  return { cut, areas };
}

/**
 * Equal for pieces that are cut alike whatever the scale and the seam: their sides are a length that grows with the grid and
 * one that grows with the seam, so both are looked at apart.
 */
function likenessOf(unit: Unit, plan: FoundationPlan): (paper: number, area: number) => string {
  const sizes = [0, SMALL].map((seam) => {
    const work: Work = workOf(unit, 1, { seam });
    return papersOf(work, plan).map(({ areas }) => areas.map((area) => laidPiece(area, seam, 0)));
  });
  return (paper, area) =>
    sizes
      .map((all) => all[paper]?.[area])
      .map((laid) => `${rounded3(laid?.width)} ${rounded3(laid?.depth)}`)
      .join(' ');
}

/** Grid units: small enough that no allowance of one patch reaches past the next. */
const SMALL = 1 / 16;

/** By a number that leaves no length of a drawn grid halfway between two. */
function rounded3(value = 0): number {
  return Math.round((value * 1000) / Math.PI);
}
