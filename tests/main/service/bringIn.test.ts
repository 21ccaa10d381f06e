import { beforeEach, expect, it } from 'vitest';
import { recipesText } from '../../../src/shared/pattern/save.ts';
import { sampleRecipe } from '../helpers/samples.ts';
import { refusalFrom, type Served, serviceOn } from '../helpers/service.ts';

let served: Served;
beforeEach(() => {
  served = serviceOn();
});

const many = (count: number) =>
  Array.from({ length: count }, (_, i) => sampleRecipe({ id: `net-${i}`, name: `Net ${i}` }));
const file = (count: number) => ({ name: 'nets.recipes.json', text: recipesText(many(count)) });
const kept = async () => (await served.service.recipes({ words: '' })).length;

async function ended(job: string, each: (doing: string) => void = () => {}) {
  for (;;) {
    const now = await served.service.job(job);
    each(now.doing);
    if (now.state !== 'working') return now;
    await new Promise((go) => setTimeout(go, 1));
  }
}

it('a long file says how many of its recipes are looked at; calls are answered meanwhile', async () => {
  const { job } = await served.service.bringIn(file(400));
  const said = new Set<string>();
  expect(await ended(job, (doing) => said.add(doing))).toMatchObject({ state: 'done', progress: 1 });
  expect([...said].some((words) => /^\d+ of 400 recipes$/.test(words))).toBe(true);
  expect(await served.service.broughtIn(job)).toMatchObject({ kind: 'recipes', already: 0 });
  expect(await kept()).toBe(400);
});

it('of a file that is stopped nothing is kept, and it can be brought in again', async () => {
  const { job } = await served.service.bringIn(file(400));
  while (!/of 400/.test((await served.service.job(job)).doing)) await new Promise((go) => setTimeout(go, 1));
  await served.service.cancel(job);
  expect((await ended(job)).state).toBe('stopped');
  expect((await refusalFrom(served.service.broughtIn(job))).kind).toBe('stopped');
  await new Promise((go) => setTimeout(go, 50));
  expect(await kept()).toBe(0);
  expect(served.reported).toEqual([]);
  const again = await served.service.bringIn(file(3));
  await ended(again.job);
  expect(await kept()).toBe(3);
});

it('a file that is wrong is refused as when it is brought in by one call', async () => {
  const wrong = { name: 'wrong.recipes.json', text: '[{' };
  const { job } = await served.service.bringIn(wrong);
  const { refusal } = await ended(job);
  expect(refusal).toMatchObject({ kind: 'bad-input' });
  expect((await refusalFrom(served.service.importFile(wrong))).words).toBe(refusal?.words);
});
