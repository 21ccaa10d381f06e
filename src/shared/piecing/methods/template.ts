import { flatCorners } from '../../drawing/curve.ts';
import type { Polygon } from '../../drawing/drawing.ts';
import { fractionOf } from '../../measure/fraction.ts';
import { given, rounded } from '../../measure/traced.ts';
import type { Cut, Method, Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import { unitPolygons } from '../unitShape.ts';
import { asScene, picture } from './picture.ts';
import { cloth } from './pieces.ts';
import { unfinishedSize } from './sums.ts';
import { templateSize } from './templateSize.ts';

const KINDS: ReadonlySet<Unit['kind']> = new Set([
  'qst',
  'three-patch',
  'square-in-square',
  'half-rectangle',
  'nine-patch',
  'checkerboard',
  'rails',
  'quarter-circle',
  'pieced',
]);

/** Any unit, each patch cut round its template. */
export const templateCut: Method = {
  id: 'template',
  name: 'Templates with seam allowance',
  source: 'Each patch and a seam all round, points blunted; common practice',
  makes: (unit) => KINDS.has(unit.kind),
  plan(unit, scale) {
    const unfinished = unfinishedSize(unit.width, unit.height, scale);
    const cuts = unitPolygons(unit).map((polygon) => cutOf(polygon, scale));
    return { cuts: alikeTogether(cuts), yield: 1, unfinished, trimmed: false, stages: stagesOf(unit, scale) };
  },
};

/** The rectangle one template is cut from, up to the ruler. */
function cutOf({ corners, role }: Polygon, scale: Scale): Cut {
  const inches = flatCorners(corners).map(({ x, y }) => ({ x: x * scale.grid, y: y * scale.grid }));
  const { width, height } = templateSize(withoutStraight(inches), scale.seam);
  const up = (length: number) => rounded(given(length, 'template with its seams'), scale.step, 'up');
  return { role, width: up(width), height: up(height), count: 1, patches: 1, use: 'template' };
}

function withoutStraight(corners: readonly { x: number; y: number }[]) {
  return corners.filter((b, i) => {
    const a = corners[(i + corners.length - 1) % corners.length] ?? b;
    const c = corners[(i + 1) % corners.length] ?? b;
    return Math.abs((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)) > 1e-9;
  });
}

function alikeTogether(cuts: readonly Cut[]): readonly Cut[] {
  const lines = new Map<string, Cut>();
  for (const cut of cuts) {
    const key = `${cut.role} ${fractionOf(cut.width.value)} ${fractionOf(cut.height.value)}`;
    const known = lines.get(key);
    lines.set(key, known === undefined ? cut : { ...known, count: known.count + 1 });
  }
  return [...lines.values()];
}

function stagesOf(unit: Unit, { grid }: Scale): readonly Stage[] {
  const patches = unitPolygons(unit).map(({ corners, role }) =>
    cloth(
      role,
      flatCorners(corners).map(({ x, y }) => ({ x: x * grid, y: y * grid })),
    ),
  );
  const words = [
    'Cut each piece round its template, on the line outside. Lay the pieces out as shown and sew them together, those that ' +
      'share the shortest seams first.',
  ];
  return [{ words, scene: asScene(picture({ cloth: patches }), 'The finished unit, patch by patch.') }];
}
