import { type Inches, same } from '../../measure/inches.ts';
import type { Closing, Closings } from './closeBorder.ts';

type SpacerClosing = Extract<Closing, { kind: 'spacer' }>;
type ChangeClosing = Extract<Closing, { kind: 'change' }>;

type Say = (length: Inches) => string;

/** What a way of closing a border does and what it changes, in one sentence. */
export function closingWords(closing: Closing, say: Say): string {
  const units = `${closing.across} units along the top and ${closing.down} along the sides`;
  switch (closing.kind) {
    case 'unit': {
      const ruler = closing.friendly ? '' : ', whose parts are on no mark of the ruler';
      return `Make the border ${say(closing.width)} wide: ${units}${ruler}.`;
    }
    case 'spacer':
      return `Put ${spacerText(closing, say)} inside it: ${units} of ${say(closing.width)}.`;
    case 'change':
      return `Make what is inside it ${changeText(closing, say)}: ${units}.`;
  }
}

function spacerText({ sides, ends }: SpacerClosing, say: Say): string {
  if (same(sides, ends)) return `plain strips of ${say(sides)}`;
  if (same(sides, 0)) return `plain strips of ${say(ends)} at the top and bottom`;
  if (same(ends, 0)) return `plain strips of ${say(sides)} at the sides`;
  return `plain strips of ${say(sides)} at the sides and ${say(ends)} at the top and bottom`;
}

function changeText({ wider, higher }: ChangeClosing, say: Say): string {
  const parts = [
    ...(same(wider, 0) ? [] : [`${say(Math.abs(wider))} ${wider > 0 ? 'wider' : 'narrower'}`]),
    ...(same(higher, 0) ? [] : [`${say(Math.abs(higher))} ${higher > 0 ? 'higher' : 'lower'}`]),
  ];
  return parts.join(' and ');
}

/** The smallest thing that would make a border close; null when nothing was found. */
export function bestClosing({ units, spacers, changes }: Closings, say: Say): string | null {
  const [spacer] = spacers;
  const unit = units.find(({ friendly }) => friendly);
  const best = spacer ?? unit ?? changes[0] ?? units[0];
  return best === undefined ? null : closingWords(best, say);
}
