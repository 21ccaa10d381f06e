import { expect, test } from 'vitest';
import { tracedText } from '../../src/shared/measure/traced.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { plainText } from '../../src/shared/writing/words.ts';
import { writeBook } from '../../src/shared/writing/writeBook.ts';
import { demoPattern } from '../helpers/starters.ts';

const worked = workOut(demoPattern('winter-nets'));

// By hand: on point, blocks of 10 with sashing of 2 come every 12 × √2 = 16.97 inches: two, three and four of them are 33.94,
// 50.91 and 67.88, on the ruler's next eighths 34, 51 and 68. With 2⅛ of mist all round they are 38¼, 55¼ and 72¼: 9, 13 and
// 17 pairs of geese of 4¼. Beyond lie 4¼ of geese and the quay on each side.
test('Winter Nets closes in all its sizes, and nothing is to be looked at again', () => {
  expect(worked.findings).toEqual([]);
  expect(worked.sizes.map(({ quilt }) => [quilt.centre.width.value, quilt.centre.height.value])).toEqual([
    [34, 34],
    [34, 51],
    [51, 68],
    [68, 68],
  ]);
  const geese = worked.sizes.map(({ quilt }) => quilt.borders.find(({ border }) => border === 'geese')?.units);
  expect(geese.map((units) => [units?.across, units?.down])).toEqual([
    [9, 9],
    [9, 13],
    [13, 17],
    [17, 17],
  ]);
  expect(worked.sizes.map(({ quilt }) => quilt.finished.width.value)).toEqual([
    38.25 + 8.5 + 6,
    38.25 + 8.5 + 8,
    55.25 + 8.5 + 8,
    72.25 + 8.5 + 12,
  ]);
});

test('its book says how the seams of the geese are pressed', () => {
  const borders = writeBook(worked).sections.find(({ id }) => id === 'borders');
  const steps = borders?.blocks.flatMap((block) => (block.kind === 'steps' ? block.steps : [])) ?? [];
  const said = steps.flatMap(({ words }) => words.map((sentence) => plainText(sentence, tracedText))).join('\n');
  expect(said).toContain('Press the seams between them downwards, as they lie in the quilt. Sew these to the sides.');
  expect(said).toContain(
    'Press the seams between them to the left, as they lie in the quilt. Press away from the squares.',
  );
});
