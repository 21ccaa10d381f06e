import type { Finding } from '../measure/finding.ts';
import { type Drawing, doubleArea, patchPoints } from './drawing.ts';
import type { Box, Point } from './turn.ts';

/**
 * What is wrong with a drawing, in words, each with its place: patches of no area, overlaps, gaps. A sound drawing gives
 * an empty list. Every inner edge of a sound drawing is walked once each way, by the two patches that share it; every
 * outer edge once. An edge walked twice the same way is an overlap; one walked once inside the outline borders a gap.
 * @param path where the drawing stands in the document
 */
export function checkDrawing(drawing: Drawing, path: string): readonly Finding[] {
  const flat = drawing.patches.flatMap((patch, index) =>
    doubleArea(patchPoints(drawing, patch)) > 0 ? [] : [`Patch ${index + 1} has no area.`],
  );
  if (flat.length > 0) return flat.map((what) => ({ level: 'stops', what, where: { path } }));
  return [...outside(drawing, path), ...edgeFindings(drawing, path)];
}

function outside(drawing: Drawing, path: string): readonly Finding[] {
  const away = drawing.points.find((p) => p.x < 0 || p.y < 0 || p.x > drawing.width || p.y > drawing.height);
  if (away === undefined) return [];
  return [
    { level: 'stops', what: `A patch reaches outside the block at ${placeText(away)}.`, where: at(path, away, away) },
  ];
}

function edgeFindings(drawing: Drawing, path: string): readonly Finding[] {
  const walked = new Map<string, number>();
  const edges = drawing.patches.flatMap(({ outline }) =>
    outline.map((a, i) => [a, outline[(i + 1) % outline.length]] as const),
  );
  for (const [a, b] of edges) walked.set(`${a}>${b}`, (walked.get(`${a}>${b}`) ?? 0) + 1);
  const point = (index: number | undefined) => drawing.points[index as number] as Point;
  const findings: Finding[] = [];
  for (const [a, b] of edges) {
    const from = point(a);
    const to = point(b);
    if ((walked.get(`${a}>${b}`) ?? 0) > 1) {
      findings.push({ level: 'stops', what: `Two patches overlap at ${placeText(from)}.`, where: at(path, from, to) });
    } else if (!walked.has(`${b}>${a}`) && !onOutline(from, to, drawing)) {
      findings.push({
        level: 'stops',
        what: `There is a gap in the block at ${placeText(from)}.`,
        where: at(path, from, to),
      });
    }
  }
  if (findings.length === 0 && !coversAll(drawing)) {
    findings.push({ level: 'stops', what: 'The patches do not cover the whole block.', where: { path } });
  }
  return findings.slice(0, 12);
}

function coversAll(drawing: Drawing): boolean {
  const covered = drawing.patches.reduce((total, patch) => total + doubleArea(patchPoints(drawing, patch)), 0);
  return Math.abs(covered - 2 * drawing.width * drawing.height) < 1e-9 * drawing.width * drawing.height;
}

function onOutline(a: Point, b: Point, { width, height }: Drawing): boolean {
  return (a.x === b.x && (a.x === 0 || a.x === width)) || (a.y === b.y && (a.y === 0 || a.y === height));
}

function placeText(point: Point): string {
  return `${point.x} across, ${point.y} down on its grid`;
}

function at(path: string, a: Point, b: Point): { path: string; box: Box } {
  const box = { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) };
  return { path, box };
}
