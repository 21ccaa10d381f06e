import { quiltFigure } from '../diagrams/quiltFigure.ts';
import type { Section } from './book.ts';
import type { Desk } from './desk.ts';
import { coverSkills } from './skills.ts';

/** One big flat quilt, and the sizes it comes in. */
export function cover(desk: Desk): Section {
  const { shown, pattern, units } = desk;
  const figure = quiltFigure(shown.quilt, desk.blocks, { borders: true, name: pattern.title, units });
  const sizes = desk.sizes.map(({ size, quilt }) => ({ name: size.name, ...quilt.finished }));
  return {
    id: 'cover',
    title: pattern.title,
    newPage: true,
    blocks: [{ kind: 'cover', units, figure, sizes, skills: coverSkills(desk) }],
  };
}
