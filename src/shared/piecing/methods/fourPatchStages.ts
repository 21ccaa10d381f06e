import type { Traced } from '../../measure/traced.ts';
import type { Scale, Stage } from '../method.ts';
import type { Scene } from '../scene.ts';
import { darker } from './darker.ts';
import { asScene, beside, type Picture, picture, together } from './picture.ts';
import { at, cloth, faceToFace, line, press, rectangle } from './pieces.ts';

/**
 * The stages both ways of making a four-patch share. The seams about its middle are pressed clockwise, whichever fabric
 * is darker: then every four-patch nests with every other, on all four sides (common practice).
 */

/** Sizes as cut, inches: `across` one patch's width, `down` its height. */
export interface FourPatchCloth {
  /** Top left and bottom right, then the other two. */
  readonly roles: readonly [string, string];
  readonly across: number;
  readonly down: number;
  readonly scale: Scale;
}

/** Two pieces of this length right sides together, sewn along their lower sides. */
export function sewnTogether({ roles, down, scale }: FourPatchCloth, length: number): Picture {
  const [first, second] = roles;
  const seam = down - scale.seam;
  const lines = [line('sewn', at(0, seam), at(length, seam))];
  return together(faceToFace(second, first, length, down), picture({ lines }));
}

/** The same two opened: the first fabric above the second, or the other way up. */
export function openedOut({ roles, down, scale }: FourPatchCloth, length: number, turned = false): Picture {
  const [upper, lower] = turned ? [roles[1], roles[0]] : roles;
  const depth = down - scale.seam;
  return picture({
    cloth: [cloth(upper, rectangle(0, 0, length, depth)), cloth(lower, rectangle(0, depth, length, depth))],
  });
}

/** An arrow from the middle of that seam to the first fabric. */
export function pressFirst({ down, scale }: FourPatchCloth, length: number): Picture {
  const depth = down - scale.seam;
  return picture({ arrows: [press(at(length / 2, depth), at(length / 2, 0), depth / 2)] });
}

/** Which way that seam is pressed. `every`: what it is pressed alike in, when nobody knows which fabric is darker. */
export function pressWords({ roles, scale }: FourPatchCloth, every: string): string {
  const deep = darker(roles, scale);
  if (deep === null) return `towards the same fabric in every ${every}`;
  return deep === 'first' ? 'towards the darker fabric' : 'towards the lighter fabric';
}

/** Two pieces side by side, one turned, ready to be joined. */
export function joinStage(four: FourPatchCloth, piece: string): Stage {
  const { across } = four;
  const words = [
    `For each four-patch turn one ${piece} end for end beside another, so that the fabrics alternate. Lay them right ` +
      'sides together, the seams pushed snugly against each other, and sew.',
  ];
  const alt = 'Two pieces side by side, one turned end for end, so that the two fabrics alternate.';
  const scene = asScene(beside(across / 4, openedOut(four, across), openedOut(four, across, true)), alt);
  return { words: [...words], scene };
}

/** The finished four-patch, its seams pressed clockwise about the middle. */
export function spinStage(four: FourPatchCloth, measure: readonly (string | Traced)[]): Stage {
  const words = [
    'Open it out. Where the seams cross, undo the few stitches of the first two seams inside the allowance of the last ' +
      'one, and press the seams round the middle as the arrows show. The four-patch measures ',
    ...measure,
    '.',
  ];
  return { words, scene: spun(four) };
}

function spun(four: FourPatchCloth): Scene {
  const { roles, across, down, scale } = four;
  const [first, second] = roles;
  const width = across - scale.seam;
  const height = down - scale.seam;
  const patch = (role: string, column: number, row: number) =>
    cloth(role, rectangle(column * width, row * height, width, height));
  const arrow = (x: number, y: number, dx: number, dy: number) =>
    press(at(x * width, y * height), at((x + dx) * width, (y + dy) * height), Math.min(width, height) / 3);
  const pieces = [patch(first, 0, 0), patch(second, 1, 0), patch(first, 1, 1), patch(second, 0, 1)];
  const arrows = [arrow(1, 0.5, 1, 0), arrow(1.5, 1, 0, 1), arrow(1, 1.5, -1, 0), arrow(0.5, 1, 0, -1)];
  const alt = 'The finished four-patch; four arrows show its seams pressed clockwise about the middle.';
  return asScene(picture({ cloth: pieces, arrows }), alt);
}
