import { describe, expect, it } from 'vitest';
import { inputs } from '../../../src/main/service/inputs.ts';

describe('what the window may ask', () => {
  const proof = { kinds: [{ width: 3, height: 2, count: 4, turns: true }], width: 40, seconds: 20 };

  it('is a proof that tells lengths in the house’s units', () => {
    for (const units of ['inches', 'centimetres']) {
      expect(inputs.prove.safeParse({ ...proof, units }).success).toBe(true);
    }
    expect(inputs.prove.safeParse(proof).success).toBe(true);
    expect(inputs.prove.safeParse({ ...proof, units: 'ells' }).success).toBe(false);
  });
});
