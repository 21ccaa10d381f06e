import type { Planner } from '../../shared/cloth/cuttingPlan.ts';
import { provenNeeds } from '../../shared/cloth/fabricNeeds.ts';
import { planStrips, type StripPlan } from '../../shared/cloth/strips/planStrips.ts';
import { unitsOn } from '../../shared/measure/metric.ts';
import { cliffsIn, costIn, finishingIn } from '../../shared/workroom/clothWays.ts';
import type { WorkedOut } from '../../shared/workroom/workedOut.ts';
import { workOut } from '../../shared/workroom/workOut.ts';
import { workerProver } from '../plan/workerProver.ts';
import { bundleFacts, bundleText, fromBundle } from './bundle.ts';
import { cliffText } from './cliffText.ts';
import { cutText } from './cutText.ts';
import { EXIT } from './exit.ts';
import { findingsText } from './findings.ts';
import { verdict } from './fit.ts';
import { fitFacts, type PatternFit } from './fitFacts.ts';
import { jsonText } from './json.ts';
import { openPattern } from './open.ts';
import type { Terminal } from './terminal.ts';

/** What is wished of `cut`. */
export interface CutWishes {
  /** Set to cut from a bundle: the pattern's own or the usual one, or what these words say of it. */
  readonly bundle?: string | true;
  /** Set to prove the plans, each in so many seconds at most. */
  readonly seconds?: number;
}

/**
 * `piecewright cut FILE`: for every size what is cut, how, and the cloth it takes.
 * @throws Refused for a bundle that its words say nothing of
 */
export async function runCut(
  file: string,
  { bundle, seconds }: CutWishes,
  json: boolean,
  terminal: Terminal,
): Promise<number> {
  const { source, pattern: own } = openPattern(file);
  const pattern = bundle === undefined ? own : fromBundle(own, bundle);
  const live = workOut(pattern);
  const worked = seconds === undefined ? live : await withProofs(live, seconds);
  const facts = fitFacts(worked);
  if (json) terminal.say(jsonText({ file, ...cutFacts(worked, facts, bundle !== undefined) }, facts.units));
  else {
    const title = `${facts.title}, edition ${facts.edition}`;
    const sizes = worked.sizes.flatMap((size) => {
      const asked = bundle === undefined || size.bundle === undefined ? [] : [bundleText(size.bundle, facts.units)];
      return [cutText(size, pattern), cliffText(cliffsIn(worked, size), pattern), ...asked];
    });
    const parts = [title, ...sizes, findingsText(facts.findings, source), verdict(facts)];
    terminal.say(parts.filter((part) => part !== '').join('\n\n'));
  }
  return facts.fits ? EXIT.fine : EXIT.findings;
}

/** The plans of every size proven, each in so many seconds at most: those that are not proven yet are gathered first. */
async function withProofs(worked: WorkedOut, seconds: number): Promise<WorkedOut> {
  const asked: Parameters<Planner>[] = [];
  const gather: Planner = (...problem) => {
    asked.push(problem);
    return planStrips(...problem);
  };
  withPlans(worked, gather);
  const prover = workerProver();
  try {
    const plans: StripPlan[] = [];
    for (const [kinds, width] of asked) {
      plans.push(await prover.prove({ kinds, width, seconds }, () => undefined, new AbortController().signal));
    }
    // They are asked for in the order in which they were gathered.
    return withPlans(worked, (...problem) => plans.shift() ?? planStrips(...problem));
  } finally {
    await prover.close();
  }
}

function withPlans(worked: WorkedOut, planner: Planner): WorkedOut {
  const sizes = worked.sizes.map((size) => {
    return { ...size, cloth: { ...size.cloth, needs: provenNeeds(size.cloth, worked.pattern, planner) } };
  });
  return { ...worked, sizes };
}

/** Everything that is cut, as plain data. */
function cutFacts(worked: WorkedOut, { title, edition, fits, findings }: PatternFit, bundled: boolean): object {
  const units = unitsOn(worked.pattern.house.step);
  const cut = worked.sizes.map((one) => {
    const { size, quilt, cloth, bundle } = one;
    return {
      id: size.id,
      name: size.name,
      finished: quilt.finished,
      ...cloth,
      cliffs: cliffsIn(worked, one),
      ways: finishingIn(worked, one),
      cost: costIn(worked, one),
      ...(bundled && bundle !== undefined ? { bundle: bundleFacts(bundle, units) } : {}),
    };
  });
  return { title, edition, fits, sizes: cut, findings };
}
