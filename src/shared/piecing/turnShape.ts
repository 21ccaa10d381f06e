import { type Turn, turnSize } from '../drawing/turn.ts';
import { turnDrawing } from '../drawing/whole.ts';
import type { Corner } from '../recipe/schema.ts';
import type { FlippedCorner } from './piecing.ts';
import type { Shape } from './shape.ts';

type Of<K extends Shape['kind']> = Extract<Shape, { kind: K }>;

/** The kinds whose description says how they lie: turned, they are another description of the same kind. */
export type Described = Of<'corners' | 'qst' | 'square-in-square' | 'half-rectangle' | 'checkerboard' | 'pieced'>;

/** What the unit is called once it is turned. */
export function turnShape(shape: Described, turn: Turn): Described {
  const size = turnSize(shape.width, shape.height, turn);
  switch (shape.kind) {
    case 'corners':
      return { ...shape, ...size, corners: turnCorners(shape.corners, turn) };
    case 'qst':
      return { ...shape, ...size, roles: turnFour(shape.roles, turn, turn.mirrored ? [0, 3, 2, 1] : [0, 1, 2, 3]) };
    case 'square-in-square':
      return { ...shape, ...size, roles: turnFour(shape.roles, turn, turn.mirrored ? [1, 0, 3, 2] : [0, 1, 2, 3]) };
    case 'half-rectangle':
      return { ...turnHalves(shape, turn), ...size };
    case 'checkerboard':
      return { ...turnBoard(shape, turn), ...size };
    case 'pieced':
      return { ...shape, ...size, drawing: turnDrawing(shape.drawing, turn) };
  }
}

/** Clockwise from the top left: the order in which corner triangles are listed. */
export const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-right', 'bottom-left'];
const MIRRORED: Readonly<Record<Corner, Corner>> = {
  'top-left': 'top-right',
  'top-right': 'top-left',
  'bottom-right': 'bottom-left',
  'bottom-left': 'bottom-right',
};

function turnCorners(corners: readonly FlippedCorner[], turn: Turn): readonly FlippedCorner[] {
  const moved = corners.map((corner): FlippedCorner => {
    const at = turn.mirrored ? MIRRORED[corner.at] : corner.at;
    return { ...corner, at: CORNERS[(CORNERS.indexOf(at) + turn.quarters) % 4] as Corner };
  });
  return moved.sort((p, q) => CORNERS.indexOf(p.at) - CORNERS.indexOf(q.at));
}

type Four = Of<'qst'>['roles'];

/** Four roles that stand clockwise about a middle. `from` says where each place's role stood before the turning. */
function turnFour(roles: Four, { quarters }: Turn, from: readonly number[]): Four {
  const at = (place: number) => roles[from[(place + 4 - quarters) % 4] as number] as string;
  return [at(0), at(1), at(2), at(3)];
}

/** Mirrored, a rising diagonal falls and the upper triangle stays the upper; a falling one turned a quarter exchanges them. */
function turnHalves(shape: Of<'half-rectangle'>, turn: Turn): Of<'half-rectangle'> {
  let { diagonal, roles } = shape;
  if (turn.mirrored) diagonal = diagonal === 'rising' ? 'falling' : 'rising';
  for (let quarter = 0; quarter < turn.quarters; quarter += 1) {
    roles = diagonal === 'rising' ? roles : [roles[1], roles[0]];
    diagonal = diagonal === 'rising' ? 'falling' : 'rising';
  }
  return { ...shape, diagonal, roles };
}

/** Along an even number of squares the two ends differ, so that the other role comes to the top left. */
function turnBoard(shape: Of<'checkerboard'>, turn: Turn): Of<'checkerboard'> {
  let { columns, rows, roles } = shape;
  const exchanged = (many: number): typeof roles => (many % 2 === 0 ? [roles[1], roles[0]] : roles);
  if (turn.mirrored) roles = exchanged(columns);
  for (let quarter = 0; quarter < turn.quarters; quarter += 1) {
    roles = exchanged(rows);
    [columns, rows] = [rows, columns];
  }
  return { ...shape, columns, rows, roles };
}
