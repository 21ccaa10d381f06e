import type { Block, Words } from './book.ts';
import type { Desk } from './desk.ts';
import { onOneLine } from './words.ts';

/** A quilt this small may end in a cot: a usual crib quilt is at most about this large (common practice), inches. */
const COT = { width: 45, height: 60 };
const COT_WORDS = /\b(baby|babies|cot|crib|cradle|infant|nursery)\b/i;

/**
 * What a careful teacher says. Blades: Kentucky Cooperative Extension 4JF-12PB (2011). Irons: usual advice, common
 * practice. Infants: Florida Department of Health; American Academy of Pediatrics policy (2022).
 */
const USUAL: readonly Words[] = [
  [
    { strong: 'Rotary cutter. ' },
    'The blade is very sharp. Close it whenever you are not cutting, cut away from yourself on a mat, keep your fingers ',
    'clear of the ruler’s edge, and keep it from children; a child who sews needs an adult beside them.',
  ],
  [{ strong: 'Iron. ' }, 'It burns. Stand it on its heel between seams, unplug it when you stop, and mind the cord.'],
  [
    { strong: 'Needles and pins. ' },
    'Take pins out before the needle reaches them, and count them: none may stay in the quilt.',
  ],
];

const INFANT: Words = [
  { strong: 'A quilt for a baby. ' },
  'Loose quilts and soft bedding do not belong where an infant sleeps. Use it only while the baby is awake ',
  'and watched, and follow the advice of your local health authority.',
];

const SELLER: Words = [
  { strong: 'If you sell what you make. ' },
  'Rules for the safety and labelling of sewn goods differ from place to place: ask your local authority.',
];

/** The cautions of a pattern: the usual ones unless the designer took them out on purpose, and her own. */
export function cautions(desk: Desk): Block[] {
  const { words } = desk.pattern;
  const usual = words.withoutUsualCautions ? [] : [...USUAL, ...(forABaby(desk) ? [INFANT] : []), SELLER];
  const own = words.cautions.filter((caution) => caution.trim() !== '').map((caution): Words => [onOneLine(caution)]);
  const items = [...usual, ...own];
  return items.length === 0 ? [] : [{ kind: 'caution', title: 'Take care', items }];
}

function forABaby(desk: Desk): boolean {
  return desk.sizes.some(({ size, quilt }) => {
    const { width, height } = quilt.finished;
    const [short, long] = [Math.min(width.value, height.value), Math.max(width.value, height.value)];
    return COT_WORDS.test(size.name) || (short <= COT.width && long <= COT.height);
  });
}
