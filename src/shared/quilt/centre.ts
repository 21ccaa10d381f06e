import type { Box } from '../drawing/turn.ts';
import type { TracedSize } from '../measure/traced.ts';
import type { QuiltPart } from './quilt.ts';

/** What a setting makes, before its borders: the tree, where it lies and its finished size. */
export interface Centre {
  readonly part: QuiltPart;
  readonly box: Box;
  readonly size: TracedSize;
}
