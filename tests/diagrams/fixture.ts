import { inksFor } from '../../src/shared/diagrams/hatches.ts';
import { type Pattern, patternSchema } from '../../src/shared/pattern/schema.ts';
import type { Piecing } from '../../src/shared/piecing/piecing.ts';
import { unseamed } from '../../src/shared/pressing/ends.ts';
import { press } from '../../src/shared/pressing/press.ts';
import { layOut } from '../../src/shared/quilt/layOut.ts';
import type { Quilt } from '../../src/shared/quilt/quilt.ts';
import { workBlocks } from '../../src/shared/workroom/workBlocks.ts';

const roles = (...ids: readonly string[]) => ids.map((id) => ({ id, name: id, value: 'medium' as const }));

/** Eight by eight: geese round a four-patch, corners, half-square triangles. Not symmetric, so that every turn shows. */
const BEACON = {
  format: 'piecewright-recipe',
  version: 1,
  id: 'beacon',
  name: 'Beacon',
  finished: 8,
  roles: roles('foam', 'sand', 'deep', 'tide', 'lamp'),
  body: {
    kind: 'grid',
    columns: [2, 4, 2],
    rows: [2, 4, 2],
    key: {
      H: { unit: 'hst', roles: ['foam', 'deep'] },
      G: { unit: 'geese', roles: ['tide', 'foam'] },
      P: { unit: 'plain', role: 'sand' },
      C: {
        unit: 'corners',
        role: 'foam',
        corners: [
          { at: 'top-left', role: 'deep', size: 1 },
          { at: 'bottom-right', role: 'lamp', size: 1 },
        ],
      },
      F: { unit: 'four-patch', roles: ['lamp', 'deep'] },
    },
    layout: ['H G P', 'G:270 F G:90', 'C G:180 H:180'],
  },
} as const;

/** Three rounds about a square: light on two sides, dark on the other two. */
const HEARTH = {
  format: 'piecewright-recipe',
  version: 1,
  id: 'hearth',
  name: 'Hearth',
  finished: 8,
  roles: roles('lamp', 'foam', 'sand', 'tide', 'deep'),
  body: {
    kind: 'rounds',
    core: { unit: 'plain', role: 'lamp' },
    coreWidth: 2,
    coreHeight: 2,
    strip: 1,
    rounds: 3,
    order: ['right', 'bottom', 'left', 'top'],
    logs: ['foam', 'sand', 'tide', 'deep'],
  },
} as const;

function patternOf(across: number, down: number): Pattern {
  return patternSchema.parse({
    format: 'piecewright-pattern',
    version: 1,
    id: 'lights',
    title: 'Lights',
    edition: { number: 1, date: '2026-01-01' },
    words: { designer: 'Saltmarsh & Thread' },
    recipes: [BEACON, HEARTH],
    blocks: [
      { id: 'A', name: 'Beacon', recipe: 'beacon' },
      { id: 'B', name: 'Hearth', recipe: 'hearth' },
    ],
    fabrics: [
      { id: 'foam', name: 'Foam', value: 'light', colour: '#F2EDE1' },
      { id: 'sand', name: 'Sand', value: 'light', colour: '#DCC9A3' },
      { id: 'deep', name: 'Deep water', value: 'dark', colour: '#22405C' },
      { id: 'tide', name: 'Tide', value: 'medium', colour: '#6C97A6' },
      { id: 'lamp', name: 'Lamp', value: 'medium', colour: '#D9922E' },
      { id: 'night', name: 'Night', value: 'dark', colour: '#2B2A3C' },
    ],
    setting: { kind: 'straight', motif: ['A B:90', 'B:m A:180'] },
    borders: [
      { id: 'inner', name: 'Inner border', fabric: 'foam', width: 1.5 },
      { id: 'outer', name: 'Outer border', fabric: 'night', width: 4, first: 'ends' },
    ],
    binding: { fabric: 'deep' },
    backing: { fabric: 'tide' },
    sizes: [{ id: 'lap', name: 'Lap', across, down, block: 8 }],
  }) as Pattern;
}

/** A small pattern worked out as far as figures need, in one size. */
export function fixture(across = 4, down = 5) {
  const pattern = patternOf(across, down);
  const { blocks, findings } = workBlocks(pattern);
  if (findings.length > 0) throw new Error(findings.map((one) => one.what).join('\n'));
  const pieced = new Map<string, Piecing>(blocks.map((block) => [block.id, block.piecing]));
  const size = pattern.sizes[0] as Pattern['sizes'][number];
  const laid = layOut(pattern, size, pieced, 'sizes[0]');
  if (!laid.ok) throw new Error(laid.findings.map((one) => one.what).join('\n'));
  const quilt: Quilt = laid.value;
  const { plan } = press(quilt.root, ({ box }) => unseamed(box.width, box.height));
  return { pattern, blocks, quilt, pressing: plan, inks: inksFor(pattern.fabrics), grid: 1 };
}
