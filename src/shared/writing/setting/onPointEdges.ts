import { given, plus, type Traced } from '../../measure/traced.ts';
import { cutTo } from '../../quilt/cut.ts';
import type { Words } from '../book.ts';
import { type Desk, namesOf } from '../desk.ts';
import { field, sizesWords, strong } from '../words.ts';

/** The chart's letter of pieces for one place; null when no size has any. */
export function letterIn({ sizes }: Desk, words: string): string | null {
  return lineIn(sizes, words)?.letter ?? null;
}

function lineIn(sizes: Desk['sizes'], words: string) {
  return sizes.flatMap(({ cloth }) => cloth.pieces).find((line) => line.use.some((use) => use.words === words));
}

/** How squares are cut into the triangles of the edges. */
export function cutWords({ sizes }: Desk): readonly Words[] {
  const twice = ['Side triangles', 'Cornerstones at the edge'].flatMap((words) => {
    const line = lineIn(sizes, words);
    return line?.cutUp === undefined ? [] : [line.letter];
  });
  const corner = lineIn(sizes, 'Corner triangles')?.letter ?? '';
  const four: Words = twice.flatMap((letter, i) => [i === 0 ? '' : ' and ', strong(letter)]);
  const start: Words =
    twice.length === 0
      ? ['Cut each square ']
      : ['Cut each square ', ...four, ' twice diagonally into four triangles, and each '];
  return [
    [...start, strong(corner), ' once diagonally into two corner triangles.'],
    ['Their short sides are on the bias: handle them little and do not pull them.'],
  ];
}

/** Corners, and the edges made straight. */
export function edgeWords(desk: Desk): readonly Words[] {
  const { house, setting } = desk.pattern;
  const tops = desk.sizes.map(({ quilt }) => ({
    width: cutTo(quilt.centre.width, house),
    height: cutTo(quilt.centre.height, house),
  }));
  const rounded = setting.kind === 'on-point' && setting.triangles.fit !== 'exact';
  return [
    [
      'Sew a triangle ',
      strong(letterIn(desk, 'Corner triangles') ?? ''),
      ' to each corner, middle to middle. Press towards the triangle.',
    ],
    [
      'Trim the edges straight, the same beyond the points of the blocks on every side: ',
      field(beyondPoints(desk)),
      rounded ? ' or a hair more' : '',
      '. The top then measures ',
      ...sizesWords(tops, namesOf(desk, desk.sizes)),
      '.',
    ],
  ];
}

/** How far the trimmed edge lies beyond the points of the blocks: the seam, and as much as the blocks float. */
function beyondPoints({ pattern }: Desk): Traced {
  const { setting, house } = pattern;
  const seam = given(house.seam, 'seam');
  if (setting.kind !== 'on-point' || setting.triangles.fit !== 'floating') return seam;
  return plus(seam, given(setting.triangles.float ?? 0, 'floating'));
}
