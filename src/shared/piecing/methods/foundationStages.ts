import type { Point } from '../../drawing/turn.ts';
import type { Traced } from '../../measure/traced.ts';
import { type Work, whole } from '../allowance/work.ts';
import { cornersOfPiece } from '../foundation/laidPiece.ts';
import { type FoundationPaper, letterOf } from '../foundation/paper.ts';
import type { FoundationPlan } from '../foundation/sections.ts';
import type { Scale, Stage } from '../method.ts';
import type { Cloth, SceneLine } from '../scene.ts';
import { laidOut } from './cutTriangles.ts';
import type { PaperPiece, PaperPieces } from './foundationPieces.ts';
import { openedPart, type Stretch, sewnLine } from './joins.ts';
import { middleInside } from './middleInside.ts';
import { asScene, type Picture, picture, together } from './picture.ts';
import { at, cloth, line, press, rectangle } from './pieces.ts';
import { seamOf } from './sums.ts';

/** What the stages of sewing on paper are drawn from. */
export interface PaperWork {
  readonly work: Work;
  readonly plan: FoundationPlan;
  readonly papers: readonly FoundationPaper[];
  readonly pieces: readonly PaperPieces[];
  readonly scale: Scale;
  readonly measure: readonly (string | Traced)[];
}

const TEAR = ' Tear the paper away once the unit is sewn in on all sides.';

/** Cutting, the first two pieces of one paper, the rest of it, and the papers sewn together. */
export function foundationStages(of: PaperWork): readonly Stage[] {
  const shown = shownPieces(of);
  const paper = shown === null ? [] : paperStages(of, shown);
  return of.papers.length === 1 ? [cutStage(of), ...paper] : [cutStage(of), ...paper, lastStage(of)];
}

/** The paper that is shown: the one with the most pieces sewn on that begins with a piece. */
interface Shown {
  readonly paper: FoundationPaper;
  readonly patches: ReadonlySet<number>;
  readonly first: PaperPiece;
  readonly second: PaperPiece;
}

function shownPieces({ plan, papers, pieces }: PaperWork): Shown | null {
  const fit = plan.sections.flatMap(({ base, patches }, i) => (base.length === 0 && patches.length > 1 ? [i] : []));
  const [index] = fit.sort((a, b) => (papers[b]?.areas.length ?? 0) - (papers[a]?.areas.length ?? 0));
  const paper = index === undefined ? undefined : papers[index];
  if (paper === undefined) return null;
  const all = pieces.flatMap(({ areas }) => areas);
  const [first, second] = paper.areas.map((area) => all.find((piece) => piece.area === area));
  if (first === undefined || second === undefined) return null;
  return { paper, patches: new Set(plan.sections[index as number]?.patches), first, second };
}

function cutStage({ pieces, papers }: PaperWork): Stage {
  const all = pieces.flatMap(({ cut }) => {
    const { role, width, height, count } = cut;
    return Array.from({ length: count }, () =>
      picture({ cloth: [cloth(role, rectangle(0, 0, width.value, height.value))] }),
    );
  });
  const them = papers.length === 1 ? 'the paper once' : 'the papers once';
  const words = [
    `Print or copy ${them} for each unit, at its true size, and cut outside the outer line. Cut the pieces; they are larger ` +
      'than their areas on purpose.',
  ];
  return { words, scene: laidOut(all, 'The pieces of one unit, generous rectangles.') };
}

function paperStages(of: PaperWork, shown: Shown): readonly Stage[] {
  const { scale } = of;
  const { paper, first, second } = shown;
  const lines = picture({ lines: paperLines(paper) });
  const laid = picture({ cloth: [pieceCloth(of, first)] });
  const seam = second.area.seam as readonly [Point, Point];
  const over: Stretch = { from: seam[0], to: seam[1] };
  const whole = pieceCloth(of, second);
  const opened = beyond(whole, over, second);
  const flipped: Cloth = { ...whole, side: 'wrong', corners: whole.corners.map((point) => mirrored(point, over)) };
  const kept: Cloth = { ...pieceCloth(of, first), corners: onSide(pieceCloth(of, first).corners, over, second, -1) };
  const middle = at((over.from.x + over.to.x) / 2, (over.from.y + over.to.y) / 2);
  const towards = at(middle.x + second.laid.away.x, middle.y + second.laid.away.y);
  const arrow = press(middle, towards, second.laid.depth * 0.3);
  const others = paper.areas.length === 2 ? '' : 'Add the other pieces in the same way, in the order of the numbers.';
  return [
    {
      words: [
        'Hold the paper with its printed side down. Lay the first piece on it, right side up, so that it reaches at least ',
        seamOf(scale),
        ' over every line round its area, and pin it.',
      ],
      scene: asScene(together(laid, lines), 'A paper seen from its back with the first piece over its first area.'),
    },
    {
      words: [
        'Lay the next piece on it, right sides together, its edge ',
        seamOf(scale),
        ' beyond the line between the two areas. Turn the paper over and sew on that line with short stitches, from a little ' +
          'before it begins to a little after it ends.',
      ],
      scene: asScene(
        together(
          laid,
          picture({ cloth: [flipped] }),
          lines,
          picture({ lines: [sewnLine(over, laid.cloth, [flipped])] }),
        ),
        'The second piece face down on the first, sewn on the line between their areas.',
      ),
    },
    {
      words: [
        'Fold the paper back along the line and trim the allowance to ',
        seamOf(scale),
        '. Open the piece and press it over its area.',
      ],
      scene: asScene(
        together(picture({ cloth: [kept, opened], arrows: [arrow] }), lines),
        'The second piece opened over its own area; an arrow shows the pressing.',
      ),
    },
    {
      words: [
        `${others}${others === '' ? 'Trim' : ' Press, and trim'} paper and fabric on the outer line.`,
        ...(of.papers.length === 1 ? [' The unit measures ', ...of.measure, `.${TEAR}`] : [' Leave the paper in.']),
      ],
      scene: asScene(
        wholePaper(of, shown),
        'The whole paper covered, its pieces numbered in order, trimmed on its outer line.',
      ),
    },
  ];
}

/** The printed lines as they show through: the outer line and those between areas. */
function paperLines({ cut, areas }: FoundationPaper): readonly SceneLine[] {
  const round = cut.map((from, i) => line('marked', from, cut[(i + 1) % cut.length] as Point));
  const seams = areas.flatMap(({ seam }) => (seam === null ? [] : [line('marked', seam[0], seam[1])]));
  return [...round, ...seams];
}

/** A piece as cut, lying where it is when it is opened. */
function pieceCloth({ pieces }: PaperWork, { area, laid }: PaperPiece): Cloth {
  const cut = pieces.find(({ areas }) => areas.some((one) => one.area === area))?.cut;
  const [width, depth] = [cut?.width.value ?? laid.width, cut?.height.value ?? laid.depth];
  return cloth(area.role ?? '', cornersOfPiece(laid, width, depth));
}

/** What is seen of a piece that is sewn on and opened: it begins at its line. */
function beyond(piece: Cloth, over: Stretch, { laid }: PaperPiece): Cloth {
  return { ...piece, corners: onSide(piece.corners, over, { laid }, 1) };
}

/** What of an outline lies away from a line (1), or on its near side (−1). */
function onSide(
  corners: readonly Point[],
  { from }: Stretch,
  { laid: { away } }: Pick<PaperPiece, 'laid'>,
  way: 1 | -1,
): readonly Point[] {
  const off = ({ x, y }: Point) => way * ((x - from.x) * away.x + (y - from.y) * away.y);
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    const [p, q] = [off(a), off(b)];
    const here = p >= 0 ? [a] : [];
    if (p >= 0 === q >= 0) return here;
    const share = p / (p - q);
    return [...here, at(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y))];
  });
}

function mirrored(point: Point, { from, to }: Stretch): Point {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / (dx * dx + dy * dy);
  return at(2 * (from.x + along * dx) - point.x, 2 * (from.y + along * dy) - point.y);
}

function wholePaper({ work }: PaperWork, { paper, patches }: Shown): Picture {
  const numbers = paper.areas.map(({ corners, name }) => ({ at: middleInside(corners), text: name }));
  const cuts = paper.cut.map((from, i) => line('cut', from, paper.cut[(i + 1) % paper.cut.length] as Point));
  return together(openedPart(work, patches), picture({ lines: cuts, numbers }));
}

function lastStage({ work, plan, measure }: PaperWork): Stage {
  const scene = asScene(openedPart(work, whole(work)), 'The finished unit.');
  const letters = (group: readonly number[]) => group.map(letterOf).join(' ');
  const order = plan.joins.map(({ first, second }) => `${letters(first)} to ${letters(second)}`).join('; ');
  const laid = plan.sections.flatMap(({ base }, i) => (base.length === 0 ? [] : [i]));
  const based =
    laid.length === 0
      ? ''
      : ` What is joined before ${laid.map(letterOf).join(' and ')} is begun is laid on there as its first piece.`;
  const words = [
    `Sew the papers’ sections together, matching their outer lines: ${order}.${based} Press each seam open or to one side. The ` +
      'unit measures ',
    ...measure,
    `.${TEAR}`,
  ];
  return { words, scene };
}
