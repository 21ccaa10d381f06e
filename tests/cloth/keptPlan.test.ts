import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kindsPlanned } from '../../src/shared/cloth/fabricNeeds.ts';
import { keptPlan, plannerWith } from '../../src/shared/cloth/keptPlan.ts';
import { planStrips } from '../../src/shared/cloth/strips/planStrips.ts';
import { keepPlan, setBorderWidthIn, setHouse } from '../../src/shared/pattern/edits/index.ts';
import type { WorkedSize } from '../../src/shared/workroom/workedOut.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { demoPattern } from '../helpers/starters.ts';

const demo = demoPattern();
const worked = workOut(demo);
const [cot] = worked.sizes as [WorkedSize];
const kinds = kindsPlanned(cot.cloth, demo, 'sand');
const live = planStrips(kinds, 40);
/** As short as the usual plan, and said to be proven. */
const plan = { ...keptPlan('cot', 'sand', kinds, 40, live), bound: live.length };
const kept = keepPlan.apply(demo, { plan });

function sandOf(pattern: typeof demo) {
  return workOut(pattern).sizes[0]?.cloth.needs.find(({ fabric }) => fabric === 'sand')?.plan;
}

describe('a plan that is kept with the pattern', () => {
  it('is the plan of its fabric and size, with what was proved of it', () => {
    const usual = sandOf(demo);
    expect(usual?.proven).toBe(false);
    expect(sandOf(kept)?.proven).toBe(true);
    expect(sandOf(kept)?.length.value).toBe(usual?.length.value);
    expect(sandOf(kept)?.strips.flatMap(({ pieces }) => pieces)).toHaveLength(
      usual?.strips.flatMap(({ pieces }) => pieces).length ?? 0,
    );
  });

  it('no longer counts once the size needs other pieces or the cloth is another', () => {
    const border = demo.borders.find(({ fabric }) => fabric === 'sand')?.id ?? '';
    const wider = setBorderWidthIn.apply(kept, { border, size: 'cot', width: 2.25 });
    expect(sandOf(wider)).toEqual(sandOf({ ...wider, plans: [] }));
    const narrower = setHouse.apply(kept, { usableWidth: 39 });
    expect(sandOf(narrower)).toEqual(sandOf({ ...narrower, plans: [] }));
  });

  it('that claims what cannot be is let go, and told where it stands', () => {
    for (const bound of [live.length + 0.5, 400]) {
      const boasting = keepPlan.apply(demo, { plan: { ...plan, bound } });
      expect(sandOf(boasting)).toMatchObject({ bound: live.bound, proven: live.proven, disproved: true });
      const told = workOut(boasting).findings.filter(({ where }) => where.path === 'plans[0]');
      expect(told).toMatchObject([{ level: 'look', where: { size: 'Cot' } }]);
      expect(told[0]?.what).toContain('Sand in Cot');
    }
    expect(workOut(kept).findings).toEqual(worked.findings);
  });

  it('that claims too little for a plan longer than need be is let go, too', () => {
    const longer = plan.strips.map((strip) => ({ ...strip, height: strip.height + 1 }));
    const bound = longer.reduce((sum, { height, times }) => sum + height * times, 0);
    expect(plannerWith({ ...plan, bound, strips: longer })(kinds, 40)).toMatchObject({
      length: live.length,
      disproved: true,
    });
  });

  it('is passed over when it is not sound, however it was changed', () => {
    const strips = fc.integer({ min: 0, max: plan.strips.length - 1 });
    const change = fc.record({
      strip: strips,
      times: fc.integer({ min: 1, max: 9 }),
      wider: fc.double({ min: 0.01, max: 9 }),
    });
    fc.assert(
      fc.property(change, fc.boolean(), ({ strip, times, wider }, byTimes) => {
        const changed = plan.strips.map((one, i) => {
          if (i !== strip) return one;
          if (byTimes) return { ...one, times: one.times + times };
          return { ...one, pieces: one.pieces.map((piece) => ({ ...piece, width: piece.width + wider })) };
        });
        expect(plannerWith({ ...plan, strips: changed })(kinds, 40)).toEqual(live);
      }),
    );
  });

  it('gives way to a usual plan that is shorter', () => {
    const each = plan.strips.map((strip) => ({ ...strip, height: strip.height + 1 }));
    expect(plannerWith({ ...plan, bound: 0, strips: each })(kinds, 40)).toEqual(live);
  });
});
