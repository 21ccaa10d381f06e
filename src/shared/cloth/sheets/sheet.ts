import type { Inches } from '../../measure/inches.ts';
import type { Packed } from '../strips/kinds.ts';

/** A sheet of cloth: a fat quarter, a fat eighth, a square of a bundle, or whatever there is. */
export interface Sheet {
  readonly width: Inches;
  readonly height: Inches;
}

/** Sheets that are cut alike. */
export interface CutSheet {
  /** Whether the strips run along the sheet's height instead of across its width. */
  readonly lengthwise: boolean;
  /** Strips side by side, each as tall as its tallest piece; lower pieces are trimmed. */
  readonly strips: readonly Packed[];
  readonly times: number;
}
