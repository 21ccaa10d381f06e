import type { PressingPlan } from '../../shared/pressing/pressing.ts';

/** How well the seams meet, in a sentence or two. */
export function meetingWords({ nests, stacks, open }: PressingPlan): string {
  const points =
    open === 0
      ? ''
      : `At ${open} ${open === 1 ? 'point' : 'points'} the allowance lies to both sides: pin through them.`;
  if (nests + stacks === 0) return points === '' ? 'No two seams meet.' : points;
  return [seamWords(nests, stacks, open), ...(points === '' ? [] : [points])].join(' ');
}

function seamWords(nests: number, stacks: number, open: number): string {
  if (stacks === 0 && open > 0) return `${nests} ${nests === 1 ? 'place nests' : 'places nest'}.`;
  if (stacks === 0) return nests === 1 ? 'The two seams that meet nest.' : `All ${nests} places where seams meet nest.`;
  const lie = stacks === 1 ? 'At 1 place, ringed, both seams lie' : `At ${stacks} places, ringed, both seams lie`;
  const nest = nests === 0 ? '' : `${nests} places nest. `;
  return `${nest}${lie} to one side: press one of them open or the other way.`;
}
