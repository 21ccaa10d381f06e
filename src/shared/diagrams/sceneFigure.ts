import type { Scene, SceneLine } from '../piecing/scene.ts';
import type { Figure, LinePen, Mark } from './figure.ts';
import { type FabricOf, letter } from './marks.ts';

const PENS: Readonly<Record<SceneLine['kind'], LinePen>> = { marked: 'marked', sewn: 'sew', cut: 'cut' };

/** One stage of making a unit as the maker has it before her: cloth, the lines marked, sewn and cut, the way it is pressed. */
export function sceneFigure(scene: Scene, fabricOf: FabricOf): Figure {
  const cloth = scene.cloth.map(
    ({ corners, role, side }): Mark => ({
      kind: 'area',
      outlines: [corners],
      fabric: fabricOf[role] ?? null,
      tone: side === 'wrong' ? 'wrong' : 'full',
      edge: 'patch',
    }),
  );
  const lines = scene.lines.map(({ kind, from, to }): Mark => ({ kind: 'line', points: [from, to], pen: PENS[kind] }));
  const arrows = scene.arrows.map(({ from, to }): Mark => ({ kind: 'arrow', from, to, means: 'press' }));
  const numbers = (scene.numbers ?? []).map(({ text, at }) => letter(text, at, 'number'));
  const marks = [...cloth, ...lines, ...arrows, ...numbers];
  return { width: scene.width, height: scene.height, marks, alt: scene.alt };
}
