import { describe, expect, it } from 'vitest';
import type { Prover } from '../../../src/main/plan/workerProver.ts';
import { makeJobs } from '../../../src/main/service/jobs.ts';
import { provingOf } from '../../../src/main/service/proofs.ts';

const plan = { strips: [], length: 5, bound: 5, proven: true };
const squares = { kinds: [{ width: 5, height: 5, count: 8, turns: false }], width: 40, seconds: 5 };

function proverThat(prove: Prover['prove']): Prover {
  return { prove, close: async () => undefined };
}

async function ended(jobs: ReturnType<typeof makeJobs>, id: string) {
  while (jobs.job(id).state === 'working') await new Promise((go) => setTimeout(go, 5));
  return jobs.job(id);
}

describe('a proof as work that is asked after', () => {
  it('tells how near it is, and gives the plan at the end', async () => {
    const jobs = makeJobs(() => undefined);
    let go: () => void = () => undefined;
    const held = new Promise<void>((free) => {
      go = free;
    });
    const prover = proverThat(async (_, nearer) => {
      nearer({ length: 6, bound: 4.5 });
      await held;
      return plan;
    });
    const id = jobs.start(provingOf(prover, squares));
    await new Promise((free) => setTimeout(free, 10));
    expect(jobs.job(id).doing).toBe('6″ of cloth found; no plan can take less than 4½″');
    expect(() => jobs.proof(id)).toThrow('The plan is still being proven.');
    go();
    expect((await ended(jobs, id)).state).toBe('done');
    expect(jobs.proof(id)).toBe(plan);
    expect(() => jobs.result(id)).toThrow('That work makes no file.');
  });

  it('stops when it is told to', async () => {
    const jobs = makeJobs(() => undefined);
    const prover = proverThat(
      (_, __, signal) => new Promise((_go, fail) => signal.addEventListener('abort', () => fail(signal.reason))),
    );
    const id = jobs.start(provingOf(prover, squares));
    jobs.cancel(id);
    expect((await ended(jobs, id)).state).toBe('stopped');
    expect(() => jobs.proof(id)).toThrow('The proof was stopped, so there is no plan.');
  });

  it('says which piece is wider than the cloth', async () => {
    const jobs = makeJobs(() => undefined);
    const wide = { ...squares, kinds: [{ width: 41, height: 50, count: 1, turns: true }] };
    const job = await ended(
      jobs,
      jobs.start(
        provingOf(
          proverThat(async () => plan),
          wide,
        ),
      ),
    );
    expect(job.state).toBe('refused');
    expect(job.refusal?.words).toBe('A piece 41″ wide cannot be cut from cloth of 40″.');
  });
});
