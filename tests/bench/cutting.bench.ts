import { highsSolver } from '../../src/main/plan/highs.ts';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import { proveStrips } from '../../src/shared/cloth/strips/proof/proveStrips.ts';
import { levels, type Published, stocks } from '../cloth/published.ts';
import { median, type Row, type Table } from './row.ts';

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

/** What the proof of one problem may take. */
const SECONDS = 5;

interface Proved {
  readonly problem: Published;
  readonly live: number;
  readonly length: number;
  readonly bound: number;
  readonly seconds: number;
}

async function proved(problem: Published): Promise<Proved> {
  const { kinds, width } = problem;
  const solve = await highsSolver();
  const start = performance.now();
  const took = () => (performance.now() - start) / 1000;
  const { length, bound } = proveStrips(kinds, width, { solve, secondsLeft: () => SECONDS - took() });
  return { problem, live: planStrips(kinds, width).length, length, bound, seconds: took() };
}

function isLeast({ problem, length, bound }: Proved): boolean {
  return Math.abs(length - problem.least) < 1e-6 && Math.abs(bound - problem.least) < 1e-6;
}

function familyRow(family: string, way: string, all: readonly Proved[]): readonly string[] {
  const sum = (of: (one: Proved) => number) => all.reduce((total, one) => total + of(one), 0);
  const over = (100 * sum(({ live, problem }) => live / problem.least - 1)) / all.length;
  const proven = all.filter(isLeast).length;
  const slowest = Math.max(...all.map(({ seconds }) => seconds));
  return [
    family,
    way,
    String(all.length),
    String(sum(({ problem }) => problem.least)),
    `${sum(({ live }) => live)} (${over.toFixed(2)} % over on average)`,
    `${sum(({ length }) => length)} (${proven} of ${all.length} at the optimum)`,
    slowest.toFixed(2),
  ];
}

/** The problems that are not proven in time, each with its gap. */
function openRow({ problem, live, length, bound, seconds }: Proved, way: string): readonly string[] {
  const gap = `${(100 * (length / bound - 1)).toFixed(2)} % open`;
  const plan = length - problem.least < 1e-6 ? `${length}, bound ${bound}` : `${length}, bound ${bound}, not yet least`;
  return [`– ${problem.name}`, way, '1', String(problem.least), String(live), `${plan}: ${gap}`, seconds.toFixed(2)];
}

async function* provedRows(): AsyncIterable<readonly string[]> {
  const ways = [
    ['as they lie', levels('fixed')],
    ['turned', levels('turned')],
    ['stock', stocks()],
  ] as const;
  for (const [way, problems] of ways) {
    for (const family of new Set(problems.map((one) => one.family))) {
      const all: Proved[] = [];
      for (const problem of problems) if (problem.family === family) all.push(await proved(problem));
      yield familyRow(family, way, all);
      for (const one of all) if (!isLeast(one)) yield openRow(one, way);
    }
  }
}

export const tables: readonly Table[] = [
  {
    title: `Proven plans, published problems (tests/published/cutting), ${SECONDS} s each at most`,
    head: ['instances', 'pieces', 'how many', 'optimum', 'live', 'proven', 'slowest, s'],
    rows: provedRows,
  },
];
