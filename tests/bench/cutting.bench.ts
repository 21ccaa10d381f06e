import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import { levels, type Published } from '../cloth/published.ts';
import { median, type Row } from './row.ts';

/** The median over all problems of the median time of one live plan. */
async function timeToPlan(published: readonly Published[]): Promise<number> {
  const times: number[] = [];
  for (const { kinds, width } of published) {
    times.push(await median(() => planStrips(kinds, width), { warm: 1, timed: 3 }));
  }
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
}

/** By how many in a hundred the live plans are longer than need be, on average. */
function overTheLeast(published: readonly Published[]): number {
  const over = published.map(({ kinds, width, least }) => (planStrips(kinds, width).length / least - 1) * 100);
  return over.reduce((sum, one) => sum + one, 0) / over.length;
}

export const rows: readonly Row[] = [
  { what: 'live cutting plan, published problems', budget: 20, measure: () => timeToPlan(levels('fixed')) },
  {
    what: 'live cutting plan, published problems with turning',
    budget: 20,
    measure: () => timeToPlan(levels('turned')),
  },
  {
    what: 'live cutting plan over the least length, published problems',
    budget: 3,
    unit: '%',
    measure: () => overTheLeast(levels('fixed')),
  },
  {
    what: 'live cutting plan over the least length, with turning',
    budget: 3,
    unit: '%',
    measure: () => overTheLeast(levels('turned')),
  },
];
