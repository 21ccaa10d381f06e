import { count } from '../../measure/traced.ts';
import type { WorkedSize } from '../../workroom/workedOut.ts';
import type { Words } from '../book.ts';
import { type Desk, namesOf } from '../desk.ts';
import { inSizes } from '../words.ts';

/** Where seams of neighbours nest and where they do not, in every size. */
export function nestingWords(desk: Desk, several: readonly WorkedSize[]): readonly Words[] {
  return [...meetingWords(desk, several), ...pointWords(desk, several)];
}

/** Where the seams of a point lie to both sides, so that nothing locks them to what they meet. */
function pointWords(desk: Desk, several: readonly WorkedSize[]): readonly Words[] {
  const open = several.filter(({ pressing }) => pressing.open > 0);
  if (open.length === 0) return [];
  const many = open.map(({ pressing }) => count(pressing.open, 'points'));
  return [
    [
      'In ',
      ...inSizes(many, namesOf(desk, open)),
      ' places a point meets another, or a seam, with its allowance to both sides. Push a pin straight through both before you sew across.',
    ],
  ];
}

function meetingWords(desk: Desk, several: readonly WorkedSize[]): readonly Words[] {
  const meeting = several.filter(({ pressing }) => pressing.nests + pressing.stacks > 0);
  if (meeting.length === 0) return [];
  if (meeting.every(({ pressing }) => pressing.stacks + pressing.open === 0))
    return [['Every seam that meets another nests with it.']];
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
