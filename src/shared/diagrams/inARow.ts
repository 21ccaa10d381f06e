import type { Figure, Mark } from './figure.ts';
import { moved } from './marks.ts';

/** Figures side by side at one scale, with an arrow from each to the next: the stages of making something. */
export function inARow(figures: readonly Figure[]): Figure {
  const height = Math.max(...figures.map((figure) => figure.height));
  const gap = Math.max(...figures.map((figure) => Math.max(figure.width, figure.height))) * 0.3;
  const marks: Mark[] = [];
  let x = 0;
  figures.forEach((figure, i) => {
    if (i > 0) {
      marks.push({
        kind: 'arrow',
        means: 'next',
        from: { x: x + gap * 0.2, y: height / 2 },
        to: { x: x + gap * 0.8, y: height / 2 },
      });
      x += gap;
    }
    marks.push(...figure.marks.map((mark) => moved(mark, x, (height - figure.height) / 2)));
    x += figure.width;
  });
  return { width: x, height, marks, alt: figures.map((figure) => figure.alt).join(' Then: ') };
}
