import { useMemo } from 'react';
import { drawingNotes } from '../../../shared/drawing/check.ts';
import type { Finding } from '../../../shared/measure/finding.ts';
import { allFindings } from '../../state/fit.ts';
import { usePattern, useWorked } from '../../state/hooks.tsx';
import type { ShownBlock } from '../useShownBlock.ts';
import type { DrawnBlock } from './useDrawn.ts';

/** What is wrong or hard about a drawn block, with boxes in the drawing's own grid units. What stops it comes first. */
export function useDrawnFindings(shown: ShownBlock, drawn: DrawnBlock): readonly Finding[] {
  const worked = useWorked();
  const pattern = usePattern();
  return useMemo(() => {
    const at = `recipes[${pattern.recipes.indexOf(drawn.recipe)}]`;
    const block = `blocks[${pattern.blocks.indexOf(shown.choice)}]`;
    const mine = ({ where }: Finding) =>
      (where.path.startsWith(at) || where.path.startsWith(block) || where.on === shown.choice.id) &&
      (where.size === undefined || where.size === shown.size?.size.name);
    const told = worked === null ? [] : allFindings(worked).filter(mine);
    const sewing = sewingFindings(shown, drawn);
    const grid = shown.sized?.grid ?? drawn.recipe.finished / drawn.drawing.width;
    const slivers = drawingNotes(drawn.drawing, grid, `${at}.body`);
    return once([...told, ...sewing, ...slivers]);
  }, [shown, drawn, pattern, worked]);
}

/** What piecing says, its boxes brought from the piecing's grid to the drawing's. */
function sewingFindings({ worked }: ShownBlock, { drawing }: DrawnBlock): readonly Finding[] {
  if (worked === undefined) return [];
  const scale = drawing.width / worked.piecing.drawing.width;
  return (worked.piecing.findings ?? []).map((finding) => {
    const { box, path } = finding.where;
    if (box === undefined || path.includes('pins[')) return finding;
    const scaled = { x: box.x * scale, y: box.y * scale, width: box.width * scale, height: box.height * scale };
    return { ...finding, where: { ...finding.where, box: scaled } };
  });
}

const RANK: Readonly<Record<Finding['level'], number>> = { stops: 0, look: 1, note: 2 };

function once(findings: readonly Finding[]): readonly Finding[] {
  const known = new Map(findings.map((finding) => [`${finding.what} ${finding.where.size ?? ''}`, finding]));
  return [...known.values()].toSorted((a, b) => RANK[a.level] - RANK[b.level]);
}
