import type { Traced } from '../../measure/traced.ts';
import type { Method, Stage } from '../method.ts';
import { fourPatchSize, patchSize } from './fourPatch.ts';
import {
  type FourPatchCloth,
  joinStage,
  openedOut,
  pressFirst,
  pressWords,
  sewnTogether,
  spinStage,
} from './fourPatchStages.ts';
import { ofKind } from './ofKind.ts';
import { asScene, beside, together } from './picture.ts';
import { shapeWord, sizeWords } from './sums.ts';

/** Four-patches from cut squares (or rectangles): two pairs, then one to the other. */
export const fourPatchSquares: Method = {
  id: 'four-patch-squares',
  name: 'Four-patches from cut squares',
  source: 'Squares: finished patch and a seam on each side; common practice',
  makes: (unit) => unit.kind === 'four-patch',
  plan(unit, scale) {
    const four = ofKind(unit, 'four-patch');
    const patch = patchSize(four, scale);
    const use = shapeWord(four.width, four.height);
    const unfinished = fourPatchSize(four, scale);
    const pieces = { roles: four.roles, across: patch.width.value, down: patch.height.value, scale };
    return {
      cuts: four.roles.map((role) => ({ role, ...patch, count: 2, patches: 1, use })),
      yield: 1,
      unfinished,
      trimmed: false,
      stages: stagesOf(pieces, use, sizeWords(four, unfinished)),
    };
  },
};

function stagesOf(four: FourPatchCloth, use: string, measure: readonly (string | Traced)[]): readonly Stage[] {
  const gap = four.across / 4;
  const sewn = sewnTogether(four, four.across);
  const pair = together(openedOut(four, four.across), pressFirst(four, four.across));
  return [
    {
      words: [`Lay a ${use} of each fabric right sides together and sew them along one side; make two such pairs.`],
      scene: asScene(beside(gap, sewn, sewn), 'Two pairs, each right sides together, sewn along one side.'),
    },
    {
      words: [`Open the pairs and press their seams ${pressWords(four, 'pair')}.`],
      scene: asScene(beside(gap, pair, pair), 'The two pairs opened; arrows show the pressing.'),
    },
    joinStage(four, 'pair'),
    spinStage(four, measure),
  ];
}
