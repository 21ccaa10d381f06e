import { describe, expect, test } from 'vitest';
import { patchesByFabric } from '../../src/shared/diagrams/blockCloth.ts';
import { ALL_TURNS } from '../../src/shared/drawing/turn.ts';
import { withHeld } from '../../src/shared/pattern/recipes.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';
import { workOut } from '../../src/shared/workroom/workOut.ts';
import { testPattern } from '../helpers/fixtures.ts';
import { demoPattern, starter, starterRecipes } from '../helpers/starters.ts';
import { bookOf, said, section, textOf } from './said.ts';

/** One recipe, its first block upright and its second mirrored. */
function mirroredBeside(recipe: string): Pattern {
  const demo = demoPattern();
  const { roles } = starter(recipe);
  const fabrics = Object.fromEntries(roles.map(({ id }, i) => [id, demo.fabrics[i]?.id ?? '']));
  const block = { id: 'A', name: 'Block', recipe, parameters: {}, methods: {}, fabrics };
  const setting = { kind: 'straight', motif: ['A A:m'], single: [] } as const;
  const size = { id: 'only', name: 'Only', across: 4, down: 3, block: starter(recipe).finished, borders: {} };
  const recipes = withHeld(starter(recipe), starterRecipes());
  return {
    ...demo,
    recipes,
    blocks: [block],
    setting: { ...setting, motif: [...setting.motif], single: [] },
    sizes: [size],
  };
}

describe('blocks that are mirrored', () => {
  // Common practice: a log cabin wound the other way is another block; a bear’s paw, a churn dash and a star are their own mirror images.
  test.each([
    ['log-cabin', 6],
    ['bears-paw', 0],
    ['churn-dash', 0],
    ['sawtooth-star', 0],
    ['pinwheel', 6],
    ['friendship-star', 6],
  ])('%s: as many are sewn reversed as no turn can make', (recipe, reversed) => {
    const [size] = workOut(mirroredBeside(recipe)).sizes;
    expect(size?.quilt.reversed.A ?? 0).toBe(reversed);
  });

  test('look as they did when a turn stands for the mirror', () => {
    const pattern = { ...mirroredBeside('snowball') };
    for (const turn of ALL_TURNS) {
      const token = `A:${turn.mirrored ? 'm' : ''}${turn.quarters === 0 ? '' : turn.quarters * 90}`.replace(/:$/u, '');
      const out = workOut({ ...pattern, setting: { ...pattern.setting, motif: [token] } });
      const [block] = out.blocks;
      const leaf = out.sizes[0]?.quilt.blocks[0];
      if (block === undefined || leaf === undefined) throw new Error('no block');
      const outlines = (lying: typeof turn) =>
        [...patchesByFabric(block.piecing.drawing, 1, block.fabricOf, lying)].map(([fabric, patches]) => [
          fabric,
          patches
            .map((corners) =>
              corners
                .map(({ x, y }) => `${x},${y}`)
                .sort()
                .join(' '),
            )
            .sort(),
        ]);
      expect(outlines(leaf.turn)).toEqual(outlines(turn));
    }
  });

  test('are told apart where they are sewn and where they are laid out', () => {
    const book = bookOf(mirroredBeside('log-cabin'));
    expect(textOf(book, 'blocks')).toContain('Of these, sew 6 as block Ar, reversed');
    expect(textOf(book, 'quilt')).toContain('Ar is the reversed A.');
    const captions = section(book, 'quilt').flatMap((block) =>
      block.kind === 'figures' ? block.figures.map(({ caption }) => said(caption ?? [])) : [],
    );
    expect(captions).toEqual([expect.stringContaining('6 A and 6 Ar.')]);
  });

  test('say which of their units are made the other way round', () => {
    const text = textOf(bookOf(testPattern('gulls')), 'units');
    expect(text).toMatch(/Of these, make \d+ · \d+ · \d+ as the mirror image, left for right, for block Ar\./u);
  });

  test('say nothing where none is reversed', () => {
    const book = bookOf(demoPattern());
    expect(textOf(book, 'blocks')).not.toContain('reversed');
    expect(textOf(book, 'quilt')).not.toContain('reversed');
  });
});
