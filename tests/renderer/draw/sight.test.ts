import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bringing, fitted, panned, toPlace, toScreen, zoomed } from '../../../src/renderer/block/draw/sight.ts';

const room = { width: 480, height: 440 };
const drawing = { width: 8, height: 8 };
const fit = fitted(room, drawing);

describe('how a drawing is looked at', () => {
  test('fitted, all of it is in sight', () => {
    const [near, far] = [toScreen(fit, { x: 0, y: 0 }), toScreen(fit, { x: 8, y: 8 })];
    expect(near.x).toBeGreaterThanOrEqual(0);
    expect(near.y).toBeGreaterThanOrEqual(0);
    expect(far.x).toBeLessThanOrEqual(room.width);
    expect(far.y).toBeLessThanOrEqual(room.height);
  });

  test('what is under the pointer stays under it when looked at nearer', () => {
    fc.assert(
      fc.property(fc.nat(480), fc.nat(440), fc.double({ min: 1, max: 8, noNaN: true }), (x, y, by) => {
        const before = toPlace(fit, { x, y });
        const after = toPlace(zoomed(fit, by, { x, y }, fit), { x, y });
        expect(after.x).toBeCloseTo(before.x, 6);
        expect(after.y).toBeCloseTo(before.y, 6);
      }),
    );
  });

  test('never farther than whole, never nearer than sixteen times', () => {
    expect(zoomed(fit, 0.1, { x: 0, y: 0 }, fit)).toEqual(fit);
    expect(zoomed(fit, 1000, { x: 0, y: 0 }, fit).scale).toBe(fit.scale * 16);
  });

  test('moved about, the drawing never leaves its place', () => {
    const near = zoomed(fit, 4, { x: 240, y: 220 }, fit);
    const far = panned(near, { x: 9999, y: -9999 }, room, drawing);
    expect(toScreen(far, { x: 0, y: 0 }).x).toBeLessThan(room.width / 2);
    expect(toScreen(far, { x: 8, y: 8 }).y).toBeGreaterThan(room.height / 2);
  });

  test('a place the keys go to is brought into sight', () => {
    const near = zoomed(fit, 8, { x: 0, y: 0 }, fit);
    const spot = toScreen(bringing(near, { x: 7, y: 7 }, room, drawing), { x: 7, y: 7 });
    expect(spot.x).toBeLessThan(room.width);
    expect(spot.y).toBeLessThan(room.height);
  });
});
