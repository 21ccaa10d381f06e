import type { StripPlan } from '../../shared/cloth/strips/planStrips.ts';
import type { ProveRequest } from '../../shared/contract.ts';
import { type Ruler, rulerIn } from '../../shared/measure/ruler.ts';
import type { Nearer, Prover } from '../plan/workerProver.ts';
import { Refused } from '../refusal.ts';
import type { Work } from './jobs.ts';

/** How often it is told how much of the time is gone, milliseconds. */
const TICK = 250;

/** Proves a cutting plan as work that can be asked after: how near it is, and how much of its time is gone. */
export function provingOf(prover: Prover, request: ProveRequest): Work<{ readonly plan: StripPlan }> {
  const ruler = rulerIn(request.units ?? 'inches');
  return async (tell, signal) => {
    const lost = request.kinds.find(
      ({ width, height, turns }) => width > request.width && !(turns && height <= request.width),
    );
    if (lost !== undefined) throw tooWide(lost.width, request.width, ruler);
    const began = performance.now();
    let doing = 'Looking for the shortest plan';
    const share = () => (performance.now() - began) / 1000 / request.seconds;
    const nearer: Nearer = ({ length, bound }) => {
      doing = nearerWords(length, bound, ruler);
      tell(share(), doing);
    };
    const ticking = setInterval(() => tell(Math.min(0.98, share()), doing), TICK);
    try {
      return { plan: await prover.prove(request, nearer, signal) };
    } finally {
      clearInterval(ticking);
    }
  };
}

function nearerWords(length: number, bound: number, ruler: Ruler): string {
  const found = ruler.about(length, 'up');
  const least = ruler.about(bound, 'down');
  return `${found} of cloth found; no plan can take less than ${least}`;
}

function tooWide(piece: number, cloth: number, ruler: Ruler): Refused {
  const words = `A piece ${ruler.length(piece)} wide cannot be cut from cloth of ${ruler.length(cloth)}.`;
  return new Refused('bad-input', words);
}
