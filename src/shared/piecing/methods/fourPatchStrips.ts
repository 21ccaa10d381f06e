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
import { asScene, picture, together } from './picture.ts';
import { at, line } from './pieces.ts';
import { setName } from './strips.ts';
import { sizeWords } from './sums.ts';

/**
 * Four-patches from strip sets: a strip of each fabric sewn side by side and crosscut, two sub-cuts to a four-patch. The
 * strips are as wide as a patch is high, and the sub-cuts as wide as a patch is wide.
 */
export const fourPatchStrips: Method = {
  id: 'four-patch-strips',
  name: 'Four-patches from strip sets',
  source: 'Strips and sub-cuts: finished patch and a seam on each side; common practice',
  makes: (unit) => unit.kind === 'four-patch',
  plan(unit, scale) {
    const four = ofKind(unit, 'four-patch');
    const patch = patchSize(four, scale);
    const stripSet = setName(four.roles, patch.height);
    const unfinished = fourPatchSize(four, scale);
    const pieces = { roles: four.roles, across: patch.width.value, down: patch.height.value, scale };
    return {
      cuts: four.roles.map((role) => ({
        role,
        width: patch.height,
        height: patch.width,
        count: 2,
        patches: 1,
        use: 'strip',
        stripSet,
      })),
      yield: 1,
      unfinished,
      trimmed: false,
      stages: stagesOf(pieces, patch.width, sizeWords(four, unfinished)),
    };
  },
};

function stagesOf(four: FourPatchCloth, subCut: Traced, measure: readonly (string | Traced)[]): readonly Stage[] {
  const length = 5 * four.across;
  const set = openedOut(four, length);
  return [
    {
      words: ['Lay a strip of each fabric right sides together and sew them along one long side: a strip set.'],
      scene: asScene(sewnTogether(four, length), 'Part of two strips right sides together, sewn along one long side.'),
    },
    {
      words: [`Open the strip set and press its seam ${pressWords(four, 'set')}.`],
      scene: asScene(
        together(set, pressFirst(four, length)),
        'Part of the strip set, opened; an arrow shows the pressing.',
      ),
    },
    {
      words: ['Square up one end. Sub-cut the strip set into pieces ', subCut, ' wide, two for each four-patch.'],
      scene: asScene(together(set, subCuts(four)), 'Part of the strip set with cutting lines straight across it.'),
    },
    joinStage(four, 'piece'),
    spinStage(four, measure),
  ];
}

/** The squared-up end, then four sub-cuts. */
function subCuts({ across, down, scale }: FourPatchCloth) {
  const height = 2 * (down - scale.seam);
  const lines = [0.5, 1.5, 2.5, 3.5, 4.5].map((place) =>
    line('cut', at(place * across, 0), at(place * across, height)),
  );
  return picture({ lines });
}
