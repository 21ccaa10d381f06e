import type { Container, Svg } from '@svgdotjs/svg.js';
import { short } from '../../../shared/diagrams/path.ts';
import type { Crop } from '../../../shared/pattern/photograph.ts';

/** The picture of a fabric, as a figure shows its cloth. */
export interface Print {
  readonly fabric: string;
  /** Address of the picture. */
  readonly url: string;
  /** Size of the whole picture, pixels. */
  readonly width: number;
  readonly height: number;
  readonly crop: Crop;
  /** Inches of cloth in a pixel. */
  readonly scale: number;
}

/** What a fabric is filled with instead of its colour. */
export type Fills = ReadonlyMap<string, string>;

const NONE: Fills = new Map();

let drawings = 0;

/** Keeps the pictures of one drawing as patterns that repeat over its cloth. */
export function openPrints(root: Svg): { show(prints: readonly Print[], pointsPerInch: number): Fills } {
  drawings += 1;
  const drawing = drawings;
  let defs: Container | null = null;
  let shown = '';
  let fills = NONE;
  return {
    show(prints, pointsPerInch) {
      const now =
        prints.length === 0 ? '' : JSON.stringify([pointsPerInch, prints.map(({ url: _url, ...rest }) => rest)]);
      if (now === shown) return fills;
      shown = now;
      defs?.remove();
      defs = null;
      if (prints.length === 0) {
        fills = NONE;
        return fills;
      }
      defs = root.defs().group();
      const made = prints.map((print, i) => {
        const id = `print-${drawing}-${i}`;
        addPattern(defs as Container, id, print, print.scale * pointsPerInch);
        return [print.fabric, `url(#${id})`] as const;
      });
      fills = new Map(made);
      return fills;
    },
  };
}

/** The part that shows cloth, repeated edge to edge, as large as the cloth is. @param points for one pixel of the picture */
function addPattern(defs: Container, id: string, { url, width, height, crop }: Print, points: number): void {
  const of = (pixels: number) => short(pixels * points);
  const pattern = defs.element('pattern').attr({
    id,
    patternUnits: 'userSpaceOnUse',
    width: of(crop.width),
    height: of(crop.height),
  });
  const place = { x: of(-crop.x), y: of(-crop.y), width: of(width), height: of(height) };
  (pattern as Container).element('image').attr({ href: url, ...place, preserveAspectRatio: 'none' });
}
