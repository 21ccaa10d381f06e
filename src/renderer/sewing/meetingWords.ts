import type { PressingPlan } from '../../shared/pressing/pressing.ts';

/** How well the seams meet, in a sentence or two. */
export function meetingWords({ nests, stacks }: PressingPlan): string {
  if (nests + stacks === 0) return 'No two seams meet.';
  if (stacks === 0) return nests === 1 ? 'The two seams that meet nest.' : `All ${nests} places where seams meet nest.`;
  const lie = stacks === 1 ? 'At 1 place, ringed, both seams lie' : `At ${stacks} places, ringed, both seams lie`;
  const nest = nests === 0 ? '' : `${nests} places nest. `;
  return `${nest}${lie} to one side: press one of them open or the other way.`;
}
