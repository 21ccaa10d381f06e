import { type AreaSettings, areaStrokes } from './areaStrokes.ts';
import { arrowShape } from './arrow.ts';
import type { Area, Arrow, Figure, Letter, Line, Mark } from './figure.ts';
import type { Tint } from './fill.ts';
import { finenessOf } from './fineness.ts';
import { letterShape } from './letters.ts';
import { pathOf, pathOfAll } from './path.ts';
import type { Drawn, DrawnLine, Lettered, Settings, Stroke } from './stroke.ts';
import { ARROWS, LETTERS, LINES, RIM } from './weights.ts';

/** Everything a pen has to draw for a figure, bottom first. Like marks that follow one another become one path. */
export function strokesOf(figure: Figure, settings: Settings): readonly Stroke[] {
  const inks = new Map(settings.inks.map((ink) => [ink.fabric, ink]));
  const forAreas = { ...settings, inkOf: inks, fineness: finenessOf(figure, settings.pointsPerInch) };
  return runsOf(figure.marks).flatMap((run) => strokesOfRun(run, forAreas));
}

function strokesOfRun(run: Run, settings: AreaSettings): readonly Stroke[] {
  switch (run.kind) {
    case 'area':
      return run.marks.flatMap((area) => areaStrokes(area, settings));
    case 'line':
      return [lineStroke(run.marks, settings)];
    case 'arrow':
      return arrowStrokes(run.marks, settings.pointsPerInch);
    case 'letter':
      return letterStrokes(run.marks, settings.pointsPerInch);
  }
}

type Run =
  | { readonly kind: 'area'; readonly marks: Area[] }
  | { readonly kind: 'line'; readonly marks: Line[] }
  | { readonly kind: 'arrow'; readonly marks: Arrow[] }
  | { readonly kind: 'letter'; readonly marks: Letter[] };

function alike(a: Mark, b: Mark): boolean {
  if (a.kind === 'line' && b.kind === 'line') return a.pen === b.pen;
  if (a.kind === 'arrow' && b.kind === 'arrow') return a.means === b.means;
  return a.kind === b.kind;
}

function runsOf(marks: readonly Mark[]): readonly Run[] {
  const runs: { kind: Mark['kind']; marks: Mark[] }[] = [];
  for (const mark of marks) {
    const last = runs[runs.length - 1];
    if (last !== undefined && alike(last.marks[0] as Mark, mark)) last.marks.push(mark);
    else runs.push({ kind: mark.kind, marks: [mark] });
  }
  return runs as Run[];
}

function lineStroke(lines: readonly Line[], { pointsPerInch, fineness }: AreaSettings): Drawn {
  const { pen } = lines[0] as Line;
  const { paint, ...line } = LINES[pen];
  const weight = line.weight * (pen === 'patch' || pen === 'unit' ? fineness.edges : 1);
  const path = lines.map(({ points }) => pathOf(points, pointsPerInch, false)).join('');
  return { kind: 'path', path, fill: null, line: { ...line, weight, tint: { of: paint, wash: 0 } } };
}

const INK: Tint = { of: 'ink', wash: 0 };
const SHEET: Tint = { of: 'sheet', wash: 0 };

function solidLine(tint: Tint, weight: number): DrawnLine {
  return { tint, weight, dash: null, round: false };
}

/** First the bare rim of every arrow, then every shaft, then every head. */
function arrowStrokes(arrows: readonly Arrow[], pointsPerInch: number): readonly Drawn[] {
  const shapes = arrows.flatMap((arrow) => arrowShape(arrow, pointsPerInch) ?? []);
  const shafts = shapes.map(({ shaft }) => pathOf(shaft, 1, false)).join('');
  const heads = pathOfAll(
    shapes.map(({ head }) => head),
    1,
  );
  const { weight } = ARROWS[(arrows[0] as Arrow).means];
  return [
    { kind: 'path', path: shafts, fill: null, line: solidLine(SHEET, weight + 2 * RIM) },
    { kind: 'path', path: heads, fill: SHEET, line: solidLine(SHEET, 2 * RIM) },
    { kind: 'path', path: shafts, fill: null, line: solidLine(INK, weight) },
    { kind: 'path', path: heads, fill: INK, line: null },
  ];
}

function letterStrokes(letters: readonly Letter[], pointsPerInch: number): readonly Stroke[] {
  const shapes = letters.map((letter) => letterShape(letter, pointsPerInch));
  const clear = shapes.map(({ clear: { x, y, width, height } }) => [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]);
  const texts = letters.map((letter, i): Lettered => {
    const { x, y, size } = shapes[i] as (typeof shapes)[number];
    const { text, align, upright = false } = letter;
    return { kind: 'text', text, x, y, size, align, upright, tint: { of: LETTERS[letter.style].paint, wash: 0 } };
  });
  return [{ kind: 'path', path: pathOfAll(clear, 1), fill: SHEET, line: null }, ...texts];
}
