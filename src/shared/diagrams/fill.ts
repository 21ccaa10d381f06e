import { type Hex, hatchColour } from './colour.ts';
import type { Area, Hatch, Ink } from './figure.ts';
import { coverage, type Paint } from './weights.ts';

/** A paint as mixed for one shape: `wash` (0 to 1) is how much bare cloth shows through. */
export interface Tint {
  readonly of: Paint | Hex;
  readonly wash: number;
}

/** How an area is filled: the flat tint under it, and the hatch over it when there is one. */
export interface Filling {
  readonly flat: Tint;
  readonly hatch: { readonly pattern: Hatch; readonly tint: Tint } | null;
}

/** 'colour': flat cloth colours. 'hatched': colours with a hatch of the same hue. 'plain': black and white, hatches only. */
export type Manner = 'colour' | 'hatched' | 'plain';

/** How much bare cloth shows through each tone. */
const WASH = { full: 0, pale: 0.7, wrong: 0.55 } as const;
const WASH_OF_HATCH = { full: 0, pale: 0.6, wrong: 1 } as const;
const WASH_OF_SOLID = { full: 0, pale: 0.75, wrong: 1 } as const;

const BARE: Filling = { flat: { of: 'bare', wash: 0 }, hatch: null };

/** A fabric that no ink is given for: a quiet tone rather than a guess. */
const UNKNOWN: Tint = { of: 'thread', wash: 0.75 };

/**
 * The wrong side of cloth is a flat tint of the right side without its hatch, in black and white a light grey.
 * @param tiny the figure's patches are too small for hatches: cloth is flat, in black and white a grey as dark as its hatch
 */
export function fillingOf(
  area: Pick<Area, 'fabric' | 'tone'>,
  inks: ReadonlyMap<string, Ink>,
  manner: Manner,
  tiny: boolean,
): Filling {
  if (area.fabric === null) return BARE;
  const ink = inks.get(area.fabric);
  if (ink === undefined) return { flat: UNKNOWN, hatch: null };
  return manner === 'plain'
    ? plainFilling(ink, area.tone, tiny)
    : colourFilling(ink, area.tone, tiny ? 'colour' : manner);
}

function colourFilling(ink: Ink, tone: Area['tone'], manner: Manner): Filling {
  const flat = { of: ink.colour, wash: WASH[tone] };
  const bare = manner === 'colour' || tone === 'wrong' || ink.hatch.kind === 'none' || ink.hatch.kind === 'solid';
  if (bare) return { flat, hatch: null };
  return { flat, hatch: { pattern: ink.hatch, tint: { of: hatchColour(ink.colour), wash: WASH_OF_HATCH[tone] } } };
}

function plainFilling(ink: Ink, tone: Area['tone'], tiny: boolean): Filling {
  if (tone === 'wrong') return { flat: { of: 'thread', wash: 0.88 }, hatch: null };
  if (ink.hatch.kind === 'solid') return { flat: { of: 'thread', wash: WASH_OF_SOLID[tone] }, hatch: null };
  if (tiny) return { flat: { of: 'thread', wash: 1 - coverage(ink.hatch) * (1 - WASH_OF_HATCH[tone]) }, hatch: null };
  const bare = { of: 'bare', wash: 0 } as const;
  if (ink.hatch.kind === 'none') return { flat: bare, hatch: null };
  return { flat: bare, hatch: { pattern: ink.hatch, tint: { of: 'thread', wash: WASH_OF_HATCH[tone] } } };
}
