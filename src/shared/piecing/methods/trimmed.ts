import type { Point } from '../../drawing/turn.ts';
import type { Traced, TracedSize } from '../../measure/traced.ts';
import { type Part, type Work, whole } from '../allowance/work.ts';
import type { Stage } from '../method.ts';
import { openedPart, pressArrow } from './joins.ts';
import { asScene, picture, together } from './picture.ts';
import { at, trimming } from './pieces.ts';

/** What the last stage of a unit that is trimmed says and shows. */
export interface TrimWords {
  readonly words: readonly (string | Traced)[];
  readonly alt: string;
  /** Seams whose pressing is shown: the part before, and the part added, to which they are pressed. */
  readonly arrows: readonly (readonly [Part, Part])[];
  /** Where the trimmed rectangle's top left corner lies; left out, it is about the middle of the unit. */
  readonly corner?: Point;
}

/** The unit opened, and the lines it is trimmed on. */
export function trimStageOf(
  work: Work,
  { width, height }: TracedSize,
  { words, alt, arrows, corner }: TrimWords,
): Stage {
  const { drawing } = work;
  const { x, y } = corner ?? at((drawing.width - width.value) / 2, (drawing.height - height.value) / 2);
  const lines = trimming(x, y, width.value, height.value);
  const presses = arrows.map(([first, added]) => pressArrow(work, first, added));
  const unit = together(openedPart(work, whole(work)), picture({ lines, arrows: presses }));
  return { words, scene: asScene(unit, alt) };
}
