import type { Traced } from '../../measure/traced.ts';
import type { Cut, Method, Stage } from '../method.ts';
import { type BoardWork, boardWork } from './board.ts';
import { type Board, boardSize } from './boardSize.ts';
import { ofBoard } from './boardStrips.ts';
import { columnsApart, columnsSewn, piecesApart, pressedColumn } from './columns.ts';
import { asScene } from './picture.ts';
import { shapeWord, sizeWords } from './sums.ts';

const NAMES: Readonly<Record<Board['kind'], string>> = {
  'nine-patch': 'Nine-patches from cut squares',
  checkerboard: 'Checkerboards from cut squares',
  rails: 'Rails from cut strips',
};

/** Nine-patches, checkerboards and rails from pieces cut one by one: columns first, then one to the other. */
export function fromPieces(kind: Board['kind'], id: string): Method {
  return {
    id,
    name: NAMES[kind],
    source: 'Pieces: finished patch and a seam on each side; common practice',
    makes: (unit) => unit.kind === kind,
    plan(unit, scale) {
      const board = ofBoard(unit);
      const work = boardWork(board, scale);
      const unfinished = boardSize(board, scale);
      const { width, height } = work.patch;
      const use = board.kind === 'rails' ? 'strip' : shapeWord(width.value, height.value);
      return {
        cuts: cutsOf(work, use),
        yield: 1,
        unfinished,
        trimmed: false,
        stages: stagesOf(board, work, sizeWords(board, unfinished)),
      };
    },
  };
}

function cutsOf({ columns, patch }: BoardWork, use: string): readonly Cut[] {
  const roles = columns.flatMap(({ set }) => set.roles);
  return [...new Set(roles)].map((role) => ({
    role,
    ...patch,
    count: roles.filter((other) => other === role).length,
    patches: 1,
    use,
  }));
}

function stagesOf(unit: Board, work: BoardWork, measure: readonly (string | Traced)[]): readonly Stage[] {
  const { columns, pieces, shown, toLeft, pressing } = work;
  const lay: Stage = {
    words: [`Lay out the ${unit.kind === 'rails' ? 'strips' : 'squares'} of a unit as shown.`],
    scene: asScene(shown(piecesApart(columns, pieces)), 'The pieces of a unit, each in its place.'),
  };
  const [only, ...more] = columns;
  if (only !== undefined && more.length === 0) {
    const words = [
      `Sew them together along their long sides. Press the seams ${pressing}. The unit measures `,
      ...measure,
      '.',
    ];
    return [
      lay,
      { words, scene: asScene(shown(pressedColumn(only, pieces)), 'The finished unit; arrows show the pressing.') },
    ];
  }
  return [
    lay,
    {
      words: [`Sew the squares of each ${wayOf(work)} together and press the seams as the arrows show.`],
      scene: asScene(
        shown(columnsApart(columns, pieces)),
        'The squares sewn together in lines; arrows show the pressing.',
      ),
    },
    {
      words: [
        `Sew the ${wayOf(work)}s together, the seams pushed snugly against each other where they meet. Press the long seams ` +
          'as the arrows show. The unit measures ',
        ...measure,
        '.',
      ],
      scene: asScene(shown(columnsSewn(columns, pieces, toLeft)), 'The finished unit; arrows show the pressing.'),
    },
  ];
}

function wayOf({ inRows }: BoardWork): string {
  return inRows ? 'row' : 'column';
}
