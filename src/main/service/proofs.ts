import type { StripPlan } from '../../shared/cloth/strips/planStrips.ts';
import type { ProveRequest } from '../../shared/contract.ts';
import { inchesText } from '../../shared/measure/fraction.ts';
import { toRuler } from '../../shared/measure/inches.ts';
import type { Nearer, Prover } from '../plan/workerProver.ts';
import { Refused } from '../refusal.ts';
import type { Work } from './jobs.ts';

/** How often it is told how much of the time is gone, milliseconds. */
const TICK = 250;

/** Proves a cutting plan as work that can be asked after: how near it is, and how much of its time is gone. */
export function provingOf(prover: Prover, request: ProveRequest): Work<{ readonly plan: StripPlan }> {
  return async (tell, signal) => {
    const lost = request.kinds.find(
      ({ width, height, turns }) => width > request.width && !(turns && height <= request.width),
    );
    if (lost !== undefined) throw tooWide(lost.width, request.width);
    const began = performance.now();
    let doing = 'Looking for the shortest plan';
    const share = () => (performance.now() - began) / 1000 / request.seconds;
    const nearer: Nearer = ({ length, bound }) => {
      doing = nearerWords(length, bound);
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

function nearerWords(length: number, bound: number): string {
  const found = inchesText(toRuler(length, 0.125, 'up'));
  const least = inchesText(toRuler(bound, 0.125, 'down'));
  return `${found} of cloth found; no plan can take less than ${least}`;
}

function tooWide(piece: number, cloth: number): Refused {
  const words = `A piece ${inchesText(piece)} wide cannot be cut from cloth of ${inchesText(cloth)}.`;
  return new Refused('bad-input', words);
}
