import { afterEach, expect, test, vi } from 'vitest';
import { inTurn } from '../../src/renderer/parts/figure/turns.ts';

let clock = 0;
vi.spyOn(performance, 'now').mockImplementation(() => clock);

/** A task of the window. */
const aTask = () => new Promise((done) => setTimeout(done, 5));
afterEach(aTask);

function pens() {
  const drawn: string[] = [];
  const pen = (name: string, milliseconds: number) => () => {
    clock += milliseconds;
    drawn.push(name);
  };
  return { drawn, pen };
}

test('small figures are drawn with their view', () => {
  const { drawn, pen } = pens();
  for (const name of ['a', 'b', 'c']) inTurn(pen(name, 1));
  expect(drawn).toEqual(['a', 'b', 'c']);
});

test('after a large figure the others are drawn in turns of their own, in their order', async () => {
  const { drawn, pen } = pens();
  for (const name of ['a', 'b', 'c']) inTurn(pen(name, 30));
  expect(drawn).toEqual(['a']);
  await aTask();
  await aTask();
  expect(drawn).toEqual(['a', 'b', 'c']);
});

test('a figure that is called off is not drawn, and one that cannot be drawn holds none of the others up', async () => {
  const { drawn, pen } = pens();
  const broken = vi.fn(() => {
    throw new Error('torn');
  });
  inTurn(pen('a', 30));
  const callOff = inTurn(pen('b', 30));
  inTurn(pen('c', 1));
  callOff();
  await aTask();
  await aTask();
  expect(drawn).toEqual(['a', 'c']);
  expect(() => inTurn(broken)).toThrow('torn');
  inTurn(pen('d', 1));
  expect(drawn.at(-1)).toBe('d');
});
