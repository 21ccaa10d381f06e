import type { Finding } from '../measure/finding.ts';
import { arcBetween, outlinePoints, pointAt } from './curve.ts';
import { type Drawing, doubleArea } from './drawing.ts';
import { beside, distance, SLIP } from './near.ts';
import { placeText } from './spot.ts';
import type { Box, Point } from './turn.ts';
import { edgesOf } from './vertex.ts';

/**
 * What is wrong with a drawing, in words, each with its place: patches of no area, overlaps, gaps. A sound drawing gives
 * an empty list. Every inner edge of a sound drawing is walked once each way, by the two patches that share it; every
 * outer edge once. An edge walked twice the same way is an overlap; one walked once inside the outline borders a gap.
 * @param path where the drawing stands in the document
 */
export function checkDrawing(drawing: Drawing, path: string): readonly Finding[] {
  const flat = flatFindings(drawing, path);
  if (flat.length > 0) return flat;
  const slips = slipFindings(drawing, path);
  if (slips.length > 0) return slips;
  return [...outside(drawing, path), ...pinchFindings(drawing, path), ...edgeFindings(drawing, path)];
}

/** A patch that comes by the same corner twice hangs together by a point: it cannot be cut as one piece. */
function pinchFindings(drawing: Drawing, path: string): readonly Finding[] {
  return drawing.patches.flatMap(({ outline }): Finding[] => {
    const twice = outline.find((vertex, i) => outline.indexOf(vertex) !== i);
    if (twice === undefined) return [];
    const point = pointAt(drawing, twice);
    const what = `A patch meets itself at ${onGrid(point)}.`;
    return [{ level: 'stops', what, where: at(path, point, point), mend: 'Cut it in two there.' }];
  });
}

/** Patches that are only a line or a place. */
function flatFindings(drawing: Drawing, path: string): readonly Finding[] {
  return drawing.patches.flatMap((patch, index): Finding[] => {
    if (doubleArea(outlinePoints(drawing, patch)) > 0) return [];
    const points = patch.outline.map((vertex) => pointAt(drawing, vertex));
    const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
    const least = { x: Math.min(...xs), y: Math.min(...ys) };
    const most = { x: Math.max(...xs), y: Math.max(...ys) };
    const where = points.length === 0 ? { path } : at(path, least, most);
    return [
      { level: 'stops', what: `Patch ${index + 1} has no area.`, where, mend: 'Take it out, or give it its corners.' },
    ];
  });
}

/** Vertices a hair apart, and vertices a hair off an edge: a slip of the hand, told before the gaps it makes. */
function slipFindings(drawing: Drawing, path: string): readonly Finding[] {
  const { points } = drawing;
  const pairs = points.flatMap((a, i) => {
    const b = points.slice(i + 1).find((other) => distance(a, other) < SLIP);
    return b === undefined ? [] : [{ what: `Two corners are a hair apart at ${onGrid(a)}.`, a, b }];
  });
  const edges = edgesOf(drawing).filter(([a, b]) => arcBetween(drawing, a, b) === null);
  const off = points.flatMap((point, index) => {
    const edge = edges.find(([a, b]) => {
      if (a === index || b === index) return false;
      const near = beside(point, pointAt(drawing, a), pointAt(drawing, b));
      return near.off < SLIP && near.along > 0 && near.along < 1;
    });
    return edge === undefined
      ? []
      : [{ what: `A corner is a hair off an edge at ${onGrid(point)}.`, a: point, b: point }];
  });
  return [...pairs, ...off].slice(0, 12).map(({ what, a, b }) => {
    return { level: 'stops', what, where: at(path, a, b), mend: 'Put it on the grid, or on the edge itself.' };
  });
}

/**
 * What is sound but hard: patches too narrow to sew, and patches that hang together with the rest by a point only.
 * @param grid finished inches of one grid unit
 */
export function drawingNotes(drawing: Drawing, grid: number, path: string): readonly Finding[] {
  return drawing.patches.flatMap((patch): Finding[] => {
    const outline = outlinePoints(drawing, patch);
    const round = outline.reduce((sum, a, i) => sum + distance(a, outline[(i + 1) % outline.length] as Point), 0);
    // A long thin patch is about its area over half its outline wide.
    const width = (doubleArea(outline) / round) * grid;
    if (width >= NARROWEST) return [];
    const [first] = outline as readonly [Point];
    const what = `A patch at ${onGrid(first)} is a sliver, narrower than its own seam allowance.`;
    return [{ level: 'look', what, where: at(path, first, first), mend: 'Join it with a neighbour or widen it.' }];
  });
}

/** Narrower than this a finished patch is hidden by its seam allowances, inches (common practice). */
const NARROWEST = 0.25;

function outside(drawing: Drawing, path: string): readonly Finding[] {
  const away = drawing.points.find((p) => p.x < 0 || p.y < 0 || p.x > drawing.width || p.y > drawing.height);
  if (away === undefined) return [];
  return [
    { level: 'stops', what: `A patch reaches outside the block at ${onGrid(away)}.`, where: at(path, away, away) },
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
      findings.push({ level: 'stops', what: `Two patches overlap at ${onGrid(from)}.`, where: at(path, from, to) });
    } else if (!walked.has(`${b}>${a}`) && !onOutline(from, to, drawing)) {
      findings.push({
        level: 'stops',
        what: `There is a gap in the block at ${onGrid(from)}.`,
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
  const covered = drawing.patches.reduce((total, patch) => total + doubleArea(outlinePoints(drawing, patch)), 0);
  return Math.abs(covered - 2 * drawing.width * drawing.height) < 1e-9 * drawing.width * drawing.height;
}

function onOutline(a: Point, b: Point, { width, height }: Drawing): boolean {
  return (a.x === b.x && (a.x === 0 || a.x === width)) || (a.y === b.y && (a.y === 0 || a.y === height));
}

function onGrid(point: Point): string {
  return `${placeText(point)} on its grid`;
}

function at(path: string, a: Point, b: Point): { path: string; box: Box } {
  const box = { x: Math.min(a.x, b.x), y: Math.min(a.y, b.y), width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) };
  return { path, box };
}
