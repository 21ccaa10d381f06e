import { arcBetween } from '../../drawing/curve.ts';
import { doubleArea } from '../../drawing/drawing.ts';
import type { Point } from '../../drawing/turn.ts';
import { count, type Traced } from '../../measure/traced.ts';
import { both, clothOf, type Part, type Work } from '../allowance/work.ts';
import type { Scale, Stage } from '../method.ts';
import type { SeamJoin } from '../seamTree.ts';
import type { TradeShape } from '../tradeUnit.ts';
import { unitCalled } from '../unitNames.ts';
import { curvedOn } from './curvedJoin.ts';
import type { JoinGroup, JoinStep } from './joinGroups.ts';
import { pressedTo } from './joinOrder.ts';
import { openedPart, pressArrow, type Stretch, sewnOver, stretchesOf } from './joins.ts';
import { middleInside } from './middleInside.ts';
import { asScene, beside, type Picture, picture, together } from './picture.ts';
import { seamOf } from './sums.ts';

/**
 * One stage for each different join: the two parts laid together and sewn, and the same opened.
 * @param end what is said once the unit is whole
 */
export function joinStages(
  work: Work,
  groups: readonly JoinGroup[],
  scale: Scale,
  end: Stage['words'],
): readonly Stage[] {
  const told = new Set<string>();
  return groups.map(({ steps, times }, i): Stage => {
    const last = i === groups.length - 1;
    const [step, ...more] = steps as readonly [JoinStep, ...JoinStep[]];
    const kind = more.length > 0 ? 'chain' : step.join.sewn;
    const again = told.has(kind);
    told.add(kind);
    const how = kind === 'chain' ? [again ? CHAIN_AGAIN : CHAIN_WORDS] : wordsOf(work, step, scale, again);
    const words = [...how, ...(last ? end : many(times))];
    if (more.length > 0) return { words, scene: chainScene(work, steps) };
    return { words, scene: last ? wholeScene(work, step) : partScene(work, step) };
  });
}

function many(times: number): readonly (string | Traced)[] {
  return times === 1 ? [] : [' Make ', count(times, 'for each unit'), ' for each unit.'];
}

const CHAIN_WORDS =
  'Sew these together one after another, in the order of their numbers: each time lay what is added right sides together ' +
  'with what is sewn already, sew from edge to edge, and press the seam as its arrow shows before the next.';

const CHAIN_AGAIN = 'Sew these together in the order of their numbers, pressing as the arrows show.';

/** Arrows that leave room for numbers, as a share of the depth they are pressed over. */
const SHORT = 0.18;

/** What several joins make, each added part with its number and the pressing of its seam. */
function chainScene(work: Work, steps: readonly JoinStep[]): Stage['scene'] {
  const [start] = steps as readonly [JoinStep];
  const arrows = steps.map(({ first, added, join }) => pressArrow(work, first, added, 'added', join.seam, SHORT));
  const inOrder = [start.first, ...steps.map(({ added }) => added)];
  const numbers = inOrder.map((part, i) => ({ at: heartOf(work, part), text: String(i + 1) }));
  const { first, added } = steps.at(-1) as JoinStep;
  const shown = together(openedPart(work, both(first, added)), picture({ arrows, numbers }));
  return asScene(shown, 'Several pieces sewn together, numbered in the order they are sewn; arrows show the pressing.');
}

/** A place on the largest piece of a part. */
function heartOf(work: Work, part: Part): Point {
  const pieces = [...part].map((patch) => clothOf(work, patch, part));
  const [largest] = pieces.sort((a, b) => doubleArea(b) - doubleArea(a)) as [readonly Point[]];
  return middleInside(largest);
}

const SEWN_ALT: Readonly<Record<SeamJoin['sewn'], string>> = {
  full: 'Two parts right sides together and sewn from edge to edge, and the same opened.',
  partial: 'Two parts right sides together and sewn only half of the way, and the same opened.',
  'set-in': 'A part laid on along the first side of an inside corner and sewn up to it, and the same opened.',
  curved: 'Two curved parts right sides together, touching at the middle of their curve, and the same opened.',
};

function partScene(work: Work, step: JoinStep): Stage['scene'] {
  const [laid, opened] = [laidOn(work, step), openedJoin(work, step)];
  return asScene(beside(work.seam * 3, laid, opened), SEWN_ALT[step.join.sewn]);
}

/** The last scene of a unit is the unit, and nothing beside it. */
function wholeScene(work: Work, step: JoinStep): Stage['scene'] {
  return asScene(openedJoin(work, step), 'The finished unit; an arrow shows which way its last seam is pressed.');
}

function openedJoin(work: Work, { join, first, added }: JoinStep): Picture {
  const to = pressedTo(work, join).has([...first][0] as number) ? 'first' : 'added';
  return together(
    openedPart(work, both(first, added)),
    picture({ arrows: [pressArrow(work, first, added, to, join.seam)] }),
  );
}

/** The second part lying on the first and sewn, as far as it is sewn before it has to be moved. */
function laidOn(work: Work, { join, first, added }: JoinStep): Picture {
  if (join.sewn === 'curved') return curvedOn(work, first, added, join.seam);
  const stretches = stretchesOf(work, join.seam);
  const [over] = stretches as [Stretch];
  // A partial seam begins where it will be finished from: only its far half is sewn.
  if (join.sewn === 'partial') return sewnOver(work, first, added, over, { from: 0.5 });
  return sewnOver(work, first, added, over, stretches.length > 1 ? { to: 1 } : {});
}

/** How a join is sewn, at length the first time a unit has one of its kind. */
function wordsOf(work: Work, { join, ...parts }: JoinStep, scale: Scale, again: boolean): readonly (string | Traced)[] {
  const two = bothWords(wordFor(join, parts.first), wordFor(join, parts.added));
  const close =
    join.closing === undefined ? '' : ' Then finish the seam that was left open, from where it ends to the edge.';
  switch (join.sewn) {
    case 'full':
      return [
        again
          ? `Sew ${two} together as shown.${close}`
          : `Lay ${two} right sides together as shown and sew from edge to edge. Press as the arrow shows.${close}`,
      ];
    case 'partial':
      return [
        `Lay ${two} right sides together as shown. This is a partial seam: begin at the end where their edges are even and ` +
          'stop about halfway. Press what is sewn as the arrow shows; the rest is sewn last.',
      ];
    case 'set-in':
      return again ? [`Sew ${two} together with another set-in seam.`] : setInWords(work, join, two, scale);
    case 'curved':
      return again ? [`Sew ${two} together along their curve in the same way.`] : curvedWords(two, scale);
  }
}

/** What one side of a join is: a piece, a unit that was made before, or a part of several. */
type Word = 'piece' | 'part' | TradeShape['kind'];

function wordFor({ parts }: SeamJoin, side: Part): Word {
  const unit = parts.flatMap((part) => (part.kind === 'unit' ? [part] : []));
  const made = unit.find(({ patches }) => patches.length === side.size && patches.every((patch) => side.has(patch)));
  return made?.shape.kind ?? (side.size === 1 ? 'piece' : 'part');
}

function bothWords(first: Word, added: Word): string {
  const called = (word: Word, many = 1) =>
    word === 'piece' || word === 'part' ? `${word}${many === 1 ? '' : 's'}` : unitCalled(word, many);
  return first === added ? `the two ${called(first, 2)}` : `the ${called(added)} and the ${called(first)}`;
}

function setInWords(work: Work, join: SeamJoin, two: string, scale: Scale): readonly (string | Traced)[] {
  const straight = join.seam.every(
    (a, i) => i === 0 || arcBetween(work.drawing, join.seam[i - 1] as number, a) === null,
  );
  const sides = straight ? 'side' : 'side, curved or straight,';
  return [
    `Lay ${two} right sides together along the first ${sides} of the inside corner. This is a set-in seam: sew towards the ` +
      'corner, stop ',
    seamOf(scale),
    ' before the raw edge there and secure the stitches. Turn the upper one so that the next side lies even, and sew on from ' +
      'that very point, keeping every other seam allowance out of the way. Press as the arrow shows.',
  ];
}

/** How a curved seam is sewn (common practice). */
function curvedWords(two: string, scale: Scale): readonly (string | Traced)[] {
  return [
    `Lay ${two} right sides together with the one that curves inwards on top. Match the notches in the middle and pin there, ` +
      'then pin both ends even, then in between. Sew slowly, ',
    seamOf(scale),
    ' from the edge, easing the upper edge round as you go. Where it does not lie flat, clip the edge that curves inwards, ' +
      'by less than the allowance. Press away from the part that curves outwards.',
  ];
}
