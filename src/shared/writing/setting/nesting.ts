import { count } from '../../measure/traced.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Words } from '../book.ts';
import { type Desk, namesOf } from '../desk.ts';
import { inSizes } from '../words.ts';

/** Where seams of neighbours nest and where they do not, in every size. */
export function nestingWords(desk: Desk, several: readonly WorkedSize[]): readonly Words[] {
  const meeting = several.filter(({ pressing }) => pressing.nests + pressing.stacks > 0);
  if (meeting.length === 0) return [];
  if (meeting.every(({ pressing }) => pressing.stacks === 0)) return [['Every seam that meets another nests with it.']];
  const named = namesOf(desk, meeting);
  const nests = meeting.map(({ pressing }) => count(pressing.nests, 'nest'));
  const stacks = meeting.map(({ pressing }) => count(pressing.stacks, 'lie to one side'));
  return [
    [
      'Seams that meet nest in ',
      ...inSizes(nests, named),
      ' places and lie to the same side in ',
      ...inSizes(stacks, named),
      '. Where they lie to the same side, press one of them open or the other way before you sew across.',
    ],
  ];
}
