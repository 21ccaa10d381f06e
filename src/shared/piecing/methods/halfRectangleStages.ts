import type { Point } from '../../drawing/turn.ts';
import type { Inches } from '../../measure/inches.ts';
import { plain, type TracedSize } from '../../measure/traced.ts';
import type { Scale, Stage } from '../method.ts';
import type { Unit } from '../piecing.ts';
import type { Cloth, SceneLine } from '../scene.ts';
import { laidOut } from './cutTriangles.ts';
import { laidHalf } from './halfRectangleSize.ts';
import { sewnLine } from './joins.ts';
import { asScene, type Picture, picture, together } from './picture.ts';
import { at, cloth, line, press, rectangle, trimming } from './pieces.ts';
import { seamOf } from './sums.ts';

type HalfRectangle = Extract<Unit, { kind: 'half-rectangle' }>;

interface Size {
  readonly width: Inches;
  readonly height: Inches;
}

/** Everything is drawn for a diagonal that rises; for one that falls it is turned over. */
export function halfRectangleStages(
  half: HalfRectangle,
  cut: Size,
  unfinished: TracedSize,
  scale: Scale,
): readonly Stage[] {
  const pieces = piecesOf(half, cut, unfinished, scale);
  const turned = half.diagonal === 'rising' ? (one: Picture) => one : mirrored;
  return [
    cutStage(half, cut, turned),
    {
      words: [
        'Lay a triangle of each fabric right sides together. Shift them along the long side as the figure shows, until at ' +
          'each end the sharper point sticks out beyond the other, both alike. Sew the long side; it lies on the bias.',
      ],
      scene: asScene(
        turned(pieces.sewn),
        'Two triangles right sides together, shifted a little, sewn along the long side.',
      ),
    },
    {
      words: ['Open it and press the seam to one side, the same side in every unit.'],
      scene: asScene(turned(pieces.open), 'The two triangles opened to a rectangle; an arrow shows the pressing.'),
    },
    {
      words: [
        'Trim each unit to ',
        unfinished.width,
        ' × ',
        unfinished.height,
        '. At two corners the seam runs through the point ',
        seamOf(scale),
        ' in from both edges, not through the corner itself.',
      ],
      scene: asScene(
        turned(pieces.trim),
        'The opened unit with trimming lines; its seam runs past two of their corners.',
      ),
    },
  ];
}

function cutStage(
  { roles, diagonal }: HalfRectangle,
  { width, height }: Size,
  turned: (one: Picture) => Picture,
): Stage {
  const [from, to] = diagonal === 'rising' ? ['bottom left', 'top right'] : ['bottom right', 'top left'];
  const rectangles = [...new Set(roles)].map((role) =>
    turned(
      picture({
        cloth: [cloth(role, rectangle(0, 0, width, height))],
        lines: [line('cut', at(0, height), at(width, 0))],
      }),
    ),
  );
  const words = [
    `Lay each rectangle right side up and cut it once, from ${from} to ${to}: two triangles. Cut from the other corner they ` +
      'would make the mirror image. Where a quilt takes both, cut rectangles of one fabric in twos, right sides together: ' +
      'each cut then gives one triangle for either.',
  ];
  return {
    words,
    scene: laidOut(rectangles, 'Rectangles lying right side up, each with a cut from corner to corner.'),
  };
}

function piecesOf({ roles }: HalfRectangle, cut: Size, unfinished: TracedSize, { seam }: Scale) {
  const [first, second] = roles;
  const trimmed = plain(unfinished);
  const { corners, along } = laidHalf(cut, trimmed, seam);
  const over = { from: at(-along.x, -along.y), to: at(along.x, along.y) };
  const upper = cloth(first, corners);
  const lower = cloth(
    second,
    corners.map(({ x, y }) => at(-x, -y)),
  );
  const onTop: Cloth = { ...lower, side: 'wrong', corners: lower.corners.map((point) => overLine(point, along)) };
  const sewn = picture({ cloth: [upper, onTop], lines: [sewnLine(over, [upper], [onTop])] });
  const opened = picture({ cloth: [upper, { ...lower, corners: seen(lower.corners, along) }] });
  const arrow = press(at(0, 0), at(-along.y, along.x), Math.min(cut.width, cut.height) / 4);
  const { width, height } = trimmed;
  return {
    sewn,
    open: together(opened, picture({ arrows: [arrow] })),
    trim: together(opened, picture({ lines: trimming(-width / 2, -height / 2, width, height) })),
  };
}

/** A point turned over a line through 0, 0. */
function overLine({ x, y }: Point, along: Point): Point {
  const share = 2 * (x * along.x + y * along.y);
  return at(share * along.x - x, share * along.y - y);
}

/** What is seen of the lower right half: it ends at the seam, under which its allowance is turned. */
function seen(corners: readonly Point[], along: Point): readonly Point[] {
  const off = ({ x, y }: Point) => along.x * y - along.y * x;
  return corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    const [p, q] = [off(a), off(b)];
    const here = p >= 0 ? [a] : [];
    if (p >= 0 === q >= 0) return here;
    const share = p / (p - q);
    return [...here, at(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y))];
  });
}

/** A picture turned over, left for right. */
function mirrored({ cloth: pieces, lines, arrows, numbers }: Picture): Picture {
  const over = ({ x, y }: Point): Point => at(-x, y);
  const ends = <T extends SceneLine | Picture['arrows'][number]>(one: T): T => ({
    ...one,
    from: over(one.from),
    to: over(one.to),
  });
  return {
    cloth: pieces.map((piece) => ({ ...piece, corners: piece.corners.map(over).reverse() })),
    lines: lines.map(ends),
    arrows: arrows.map(ends),
    numbers: numbers.map((number) => ({ ...number, at: over(number.at) })),
  };
}
