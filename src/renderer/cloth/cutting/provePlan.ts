import { kindsPlanned } from '../../../shared/cloth/fabricNeeds.ts';
import { keptPlan } from '../../../shared/cloth/keptPlan.ts';
import type { StripPlan } from '../../../shared/cloth/strips/planStrips.ts';
import type { Job } from '../../../shared/contract.ts';
import { same } from '../../../shared/measure/inches.ts';
import { unitsOn } from '../../../shared/measure/metric.ts';
import { keepPlan } from '../../../shared/pattern/edits/index.ts';
import type { WorkedOut, WorkedSize } from '../../../shared/workroom/workedOut.ts';
import { Refused, refusalOf } from '../../state/host.ts';
import type { Studio } from '../../state/studio.ts';
import { clothStore } from '../clothStore.ts';
import type { Proving } from '../proving.ts';

/** How long one proof may take, seconds. */
const SECONDS = 20;
/** How often the host is asked how near it is, milliseconds. */
const ASK_EVERY = 150;

/** Names the proof of one fabric in one size. */
export function provingKey(size: string, fabric: string): string {
  return `${size} ${fabric}`;
}

function say(key: string, proving: Proving | null): void {
  clothStore.setState(({ proving: before }) => {
    const next = new Map(before);
    if (proving === null) next.delete(key);
    else next.set(key, proving);
    return { proving: next };
  });
}

/**
 * Has the host prove how short the plan of one fabric can be. A shorter plan, or a better proof of the same, is kept with the
 * pattern, so that the screen and the printed pages show the same plan; taking it back is one act.
 */
export async function provePlan(studio: Studio, worked: WorkedOut, size: WorkedSize, fabric: string): Promise<void> {
  const key = provingKey(size.size.id, fabric);
  const kinds = kindsPlanned(size.cloth, worked.pattern, fabric);
  const { usableWidth: width, step } = worked.pattern.house;
  const units = unitsOn(step);
  const stopping = new AbortController();
  const stop = () => stopping.abort();
  const tell = ({ progress, doing }: Job) => say(key, { state: 'proving', progress, doing, stop });
  tell({ state: 'working', progress: 0, doing: 'Beginning' });
  try {
    const asked = kinds.map(({ letter: _letter, ...kind }) => kind);
    const plan = await proofOf(studio, { kinds: asked, width, seconds: SECONDS, units }, stopping.signal, tell);
    const before = size.cloth.needs.find((need) => need.fabric === fabric)?.plan;
    if (before === undefined) return say(key, null);
    const better = Math.max(0, before.length.value - plan.length);
    const moreKnown = better > 1e-6 || (plan.length <= before.length.value + 1e-6 && plan.bound > before.bound + 1e-6);
    if (moreKnown) studio.act(keepPlan, { plan: keptPlan(size.size.id, fabric, kinds, width, plan) });
    say(key, { state: 'done', better: moreKnown ? better : 0, proven: same(plan.length, plan.bound) });
  } catch (thrown) {
    const refusal = refusalOf(thrown);
    say(key, refusal.kind === 'stopped' ? null : { state: 'refused', refusal });
  }
}

async function proofOf(
  { host }: Studio,
  request: Parameters<Studio['host']['prove']>[0],
  signal: AbortSignal,
  tell: (job: Job) => void,
): Promise<StripPlan> {
  const { job: id } = await host.prove(request);
  for (;;) {
    if (signal.aborted) {
      await host.cancel(id).catch(() => undefined);
      throw new Refused({ kind: 'stopped', words: 'Stopped. The plan there was stays.' });
    }
    const job = await host.job(id);
    if (job.state === 'done') return host.proof(id);
    if (job.state !== 'working') throw new Refused(job.refusal ?? { kind: 'broken', words: job.doing });
    tell(job);
    await new Promise((resolve) => setTimeout(resolve, ASK_EVERY));
  }
}
