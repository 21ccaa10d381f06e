import { describe, expect, it } from 'vitest';
import { proofWords } from '../../../src/renderer/cloth/proof.ts';
import { turnOfKey, turnWords } from '../../../src/renderer/parts/turning/turnWords.ts';
import { meetingWords } from '../../../src/renderer/sewing/meetingWords.ts';
import type { FabricNeed } from '../../../src/shared/cloth/cloth.ts';
import { INCH_RULER } from '../../../src/shared/measure/ruler.ts';
import { given } from '../../../src/shared/measure/traced.ts';

function need(length: number, bound: number, least: boolean): FabricNeed {
  const plan = {
    fabric: 'sand',
    width: 40,
    strips: [],
    stripCount: 7,
    length: given(length, 'of strips'),
    bound,
    proven: length === bound,
    used: 0.9,
  };
  return { fabric: 'sand', uses: [], plan, yards: given(1, '', 'yard'), least };
}

describe('what is said of a cutting plan', () => {
  it('says that less cannot do only where that is proved', () => {
    expect(proofWords(need(17.5, 17.5, true), INCH_RULER)).toBe('7 strips, 17½″ of cloth; less cannot do.');
    expect(proofWords(need(17.5, 15.5, false), INCH_RULER)).not.toContain('cannot do');
  });

  it('says what is known of the rest, and whether it changes what is bought', () => {
    expect(proofWords(need(17.5, 15.55, false), INCH_RULER)).toBe(
      '7 strips, 17½″ of cloth; no plan can take less than 15½″.',
    );
    expect(proofWords(need(17.5, 15.5, true), INCH_RULER)).toContain('the same yards');
  });
});

describe('what is said of seams that meet', () => {
  const plan = (nests: number, stacks: number, open = 0) => ({ parts: [], nests, stacks, open, stacked: [] });

  it('counts those that nest and those that do not', () => {
    expect(meetingWords(plan(0, 0))).toBe('No two seams meet.');
    expect(meetingWords(plan(4, 0))).toBe('All 4 places where seams meet nest.');
    expect(meetingWords(plan(4, 1))).toMatch(/^4 places nest\. At 1 place, ringed,/);
    expect(meetingWords(plan(0, 3))).toMatch(/^At 3 places, ringed,/);
    expect(meetingWords(plan(4, 0, 1))).toBe(
      '4 places nest. At 1 point the allowance lies to both sides: pin through them.',
    );
  });
});

describe('turns by key and in words', () => {
  it('turns by R, back by Shift R, mirrors by M, and leaves other keys alone', () => {
    expect(turnOfKey('r')).toEqual({ quarters: 1, mirrored: false });
    expect(turnOfKey('R')).toEqual({ quarters: 3, mirrored: false });
    expect(turnOfKey('m')).toEqual({ quarters: 0, mirrored: true });
    expect(turnOfKey('x')).toBeNull();
  });

  it('says how something lies, and nothing when it lies as drawn', () => {
    expect(turnWords({ quarters: 0, mirrored: false })).toBe('');
    expect(turnWords({ quarters: 3, mirrored: true })).toBe('mirrored, turned three quarters');
  });
});
