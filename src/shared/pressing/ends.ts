import type { Turn } from '../drawing/turn.ts';
import { turnSide } from '../piecing/sub.ts';
import type { Side } from '../recipe/schema.ts';
import type { Press } from './pressing.ts';

/** Where a seam runs into an edge, in design units from the edge's left or upper end, and which way it is pressed there. */
export interface SeamEnd {
  readonly at: number;
  readonly press: Press;
}

/** A sewn thing as its neighbours meet it. */
export interface Edged {
  readonly width: number;
  readonly height: number;
  readonly ends: Readonly<Record<Side, readonly SeamEnd[]>>;
}

/** A piece with no seam on its edges. */
export function unseamed(width: number, height: number): Edged {
  return { width, height, ends: { top: [], right: [], bottom: [], left: [] } };
}

const SIDE_OF: Readonly<Record<Exclude<Press, 'open'>, Side>> = {
  up: 'top',
  right: 'right',
  down: 'bottom',
  left: 'left',
};
const PRESS_TO: Readonly<Record<Side, Press>> = { top: 'up', right: 'right', bottom: 'down', left: 'left' };

/** The way a seam lies once the thing is turned. */
export function turnPress(press: Press, turn: Turn): Press {
  return press === 'open' ? 'open' : PRESS_TO[turnSide(SIDE_OF[press], turn)];
}

/** The way a strip sewn to this side is pressed when it is pressed away from the middle. */
export function awayTo(side: Side): Press {
  return PRESS_TO[side];
}

/** The same thing turned, with its seams lying as they then do. */
export function turnEdged(edged: Edged, turn: Turn): Edged {
  const swaps = turn.quarters % 2 === 1;
  const ends = { ...unseamed(0, 0).ends } as Record<Side, readonly SeamEnd[]>;
  for (const side of ['top', 'right', 'bottom', 'left'] as const) {
    const lengthwise = side === 'top' || side === 'bottom';
    const turned = turn.quarters === 2 || (turn.quarters === 1 && !lengthwise) || (turn.quarters === 3 && lengthwise);
    const length = lengthwise ? edged.width : edged.height;
    const flips = (turn.mirrored && lengthwise) !== turned;
    const lying = edged.ends[side].map(({ at, press }) => ({
      at: flips ? length - at : at,
      press: turnPress(press, turn),
    }));
    ends[turnSide(side, turn)] = flips ? lying.reverse() : lying;
  }
  return { width: swaps ? edged.height : edged.width, height: swaps ? edged.width : edged.height, ends };
}
