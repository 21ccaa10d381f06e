import { useEffect, useState } from 'react';
import type { RecipeCard } from '../../../shared/contract.ts';
import { copyBlock, pieceBorderOf, setBorderPieced } from '../../../shared/pattern/edits/index.ts';
import type { Border, Pattern } from '../../../shared/pattern/schema.ts';
import { readRow } from '../../../shared/recipe/token.ts';
import { gatherKept, revisionsOf } from '../../library/gather.ts';
import { attempt } from '../../library/patternActs.ts';
import { Pick } from '../../parts/Pick.tsx';
import { useHost, usePattern, useStudio } from '../../state/hooks.tsx';
import type { Studio } from '../../state/studio.ts';

const PLAIN = '*';

/** Plain strips, a block of the pattern, or a unit from the library, which becomes a block of the pattern. */
export function MadeOf({ border }: { readonly border: Border }) {
  const pattern = usePattern();
  const studio = useStudio();
  const units = useUnits();
  const now = firstUnit(border);
  const inSetting = settingLetters(pattern);
  const own = pattern.blocks.map(({ id, name }) => ({
    id,
    name: inSetting.has(id) && id !== now ? `${id} ${name}, at a size of its own` : `${id} ${name}`,
  }));
  const more = units.map(({ id, name }) => ({ id: `recipe ${id}`, name }));
  const choose = (id: string) => {
    const unit = units.find((card) => `recipe ${card.id}` === id);
    if (unit !== undefined) void attempt(studio, () => pieceByUnit(studio, border, unit));
    else if (id === PLAIN) studio.act(setBorderPieced, { border: border.id, units: null });
    else pieceByBlock(studio, border, id, inSetting.has(id));
  };
  return (
    <Pick
      label="Made of"
      value={now ?? PLAIN}
      options={[{ id: PLAIN, name: 'Plain strips' }, ...own, ...more]}
      onChange={choose}
    />
  );
}

function firstUnit({ pieced }: Border): string | null {
  const [first] = pieced === undefined ? [] : readRow(pieced.units);
  return first === undefined || typeof first === 'string' ? null : first.name;
}

/** The letters that stand in the setting: they are made at the size of its blocks. */
function settingLetters({ setting }: Pattern): ReadonlySet<string> {
  const between = setting.kind === 'on-point' ? (setting.between ?? []) : [];
  const lines = [...setting.motif, ...between, ...setting.single.map(({ block }) => block)];
  return new Set(
    lines.flatMap((line) => readRow(line).flatMap((entry) => (typeof entry === 'string' ? [] : entry.name))),
  );
}

/** The library's units: what borders are mostly made of. */
function useUnits(): readonly RecipeCard[] {
  const host = useHost();
  const studio = useStudio();
  const [units, setUnits] = useState<readonly RecipeCard[]>([]);
  useEffect(() => {
    let wanted = true;
    host
      .recipes({ words: '', tag: 'units' })
      .then((found) => wanted && setUnits(found))
      .catch((thrown) => wanted && studio.sayWhy(thrown));
    return () => {
      wanted = false;
    };
  }, [host, studio]);
  return units;
}

let turns = 0;

/** One act, whatever it takes. */
function mark(): string {
  turns += 1;
  return `made of ${turns}`;
}

/** A block that stands in the setting is copied first: one letter is made at one size. */
function pieceByBlock(studio: Studio, border: Border, block: string, copied: boolean): void {
  const one = mark();
  if (copied) studio.act(copyBlock, { block }, one);
  const units = copied ? (lastBlock(studio) ?? block) : block;
  studio.act(setBorderPieced, { border: border.id, units }, one);
}

async function pieceByUnit(studio: Studio, border: Border, { recipe, revision }: RecipeCard): Promise<void> {
  const held = await gatherKept(studio.host, recipe);
  const revisions = revisionsOf([{ recipe, revision }, ...held]);
  studio.act(pieceBorderOf, { border: border.id, recipe, others: held.map((kept) => kept.recipe), revisions });
}

function lastBlock({ store }: Studio): string | undefined {
  return store.getState().history?.now.blocks.at(-1)?.id;
}
