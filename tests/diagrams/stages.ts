/**
 * Draws every stage of every method for a unit of every kind at print size on one page, to be looked at:
 * `node tests/diagrams/stages.ts > stages.html`, then open it in a browser. Given the ids of starter recipes it draws the
 * units of those that have seams of their own instead.
 */
import { figureSize, figureToSvg } from '../../src/main/paper/figurePen.ts';
import type { Ink } from '../../src/shared/diagrams/figure.ts';
import { hatchFor } from '../../src/shared/diagrams/hatches.ts';
import { sceneFigure } from '../../src/shared/diagrams/sceneFigure.ts';
import { tracedText } from '../../src/shared/measure/traced.ts';
import { lower } from '../../src/shared/piecing/lower.ts';
import type { Scale, Stage } from '../../src/shared/piecing/method.ts';
import { methodsFor } from '../../src/shared/piecing/methods/index.ts';
import type { Unit } from '../../src/shared/piecing/piecing.ts';
import { unitPolygons } from '../../src/shared/piecing/unitShape.ts';
import { starter, starterBook } from '../helpers/starters.ts';
import { oneOfEach } from '../piecing/someUnits.ts';

const INKS: readonly Ink[] = (
  [
    ['a', '#2a4560', 'dark'],
    ['b', '#ece3cf', 'light'],
    ['c', '#86a8b0', 'medium'],
    ['d', '#d9922e', 'medium'],
    ['e', '#a6bb9a', 'light'],
  ] as const
).map(([fabric, colour, value], i) => ({ fabric, colour, hatch: hatchFor(i, value) }));
const SCALE: Scale = { grid: 1, seam: 0.25, step: 0.125 };
const POINTS_PER_INCH = 22;

/** Each role to an ink, in the order the unit has them. */
function fabricOf(unit: Unit): Readonly<Record<string, string>> {
  const roles = [...new Set(unitPolygons(unit).map(({ role }) => role))].sort();
  return Object.fromEntries(roles.map((role, i) => [role, INKS[i % INKS.length]?.fabric ?? '']));
}

function shown({ words, scene }: Stage, unit: Unit): string {
  const figure = sceneFigure(scene, fabricOf(unit));
  const scale = Math.min(POINTS_PER_INCH, 150 / Math.max(figure.width, figure.height)) / 72;
  const { width, height } = figureSize(figure, scale);
  const svg = figureToSvg(figure, { plainInk: false, hatched: true, scale, inks: INKS, letterFont: 'sans-serif' });
  const inPoints = svg.replace(/ width="([\d.]+)" height="([\d.]+)"/, ' width="$1pt" height="$2pt"');
  const text = words.map((word) => (typeof word === 'string' ? word : `<b>${tracedText(word)}</b>`)).join('');
  return `<div class="stage"><div style="width:${width}pt;height:${height}pt">${inPoints}</div><p>${text}</p></div>`;
}

function told(unit: Unit): string {
  const rows = methodsFor(unit).map((method) => {
    const plan = method.plan(unit, SCALE);
    const cuts = plan.cuts.map(
      ({ count, role, width, height, use }) => `${count} ${role} ${tracedText(width)}×${tracedText(height)} ${use}`,
    );
    const size = `${tracedText(plan.unfinished.width)}×${tracedText(plan.unfinished.height)}`;
    const head = `<h3>${method.name} – yields ${plan.yield}, ${size}${plan.trimmed ? ', trimmed' : ''}: ${cuts.join('; ')}</h3>`;
    return `${head}<div class="row">${plan.stages.map((stage) => shown(stage, unit)).join('')}</div>`;
  });
  return `<h2>${unit.kind} ${unit.width} × ${unit.height}</h2>${rows.join('')}`;
}

function piecedUnits(ids: readonly string[]): readonly Unit[] {
  const book = starterBook();
  return ids.flatMap((id) => {
    const lowered = lower(starter(id), {}, book, id);
    if (!lowered.ok) throw new Error(lowered.findings.map(({ what }) => what).join(' '));
    return lowered.value.units.filter(({ kind }) => kind === 'pieced');
  });
}

const ids = process.argv.slice(2);
const shownUnits = ids.length === 0 ? oneOfEach() : piecedUnits(ids);
const style = `body{margin:12px;font:9px sans-serif;width:1250px}h2{font-size:13px;margin:14px 0 2px}h3{font-size:9px;margin:6px 0 2px}
.row{display:flex;gap:14px;flex-wrap:wrap}.stage{max-width:230px}p{margin:3px 0;line-height:1.2}`;
console.log(`<!doctype html><meta charset="utf-8"><title>Stages</title><style>${style}</style>`);
console.log(shownUnits.map(told).join('\n'));
