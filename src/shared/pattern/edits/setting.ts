import { afterTurn, type Turn, UNTURNED } from '../../drawing/turn.ts';
import { type Token, writeRow, writeToken } from '../../recipe/token.ts';
import type { Edit } from '../edit.ts';
import { blockAt, motifAt, readMotif } from '../motif.ts';
import { type DarkCorner, type MotifTemplate, motifFor } from '../motifTemplate.ts';
import type { Pattern, Setting } from '../schema.ts';
import { whole, withFields, without } from './list.ts';

/** A place in the quilt or in the motif. */
export interface Cell {
  readonly column: number;
  readonly row: number;
}

type Cells = readonly Cell[];

function blocksText(cells: Cells): string {
  return cells.length === 1 ? 'a block' : `${cells.length} blocks`;
}

function turnText(by: Turn): string {
  return by.mirrored ? 'Mirror' : 'Turn';
}

function withSetting(pattern: Pattern, fields: Partial<Setting>): Pattern {
  return withFields(pattern, { setting: withFields(pattern.setting, fields) });
}

/** Sets what stands at some places of one size, or of all; a place that equals the motif again needs no entry. */
function placed(pattern: Pattern, cells: Cells, size: string | null, change: (was: Token) => Token): Pattern {
  const { setting } = pattern;
  const at = blockAt(pattern);
  const isHere = (one: Setting['single'][number]) =>
    (one.size ?? null) === size && cells.some(({ column, row }) => one.column === column && one.row === row);
  const rest = setting.single.filter((one) => !isHere(one));
  const below = blockAt({ ...pattern, setting: { ...setting, single: rest } });
  const entries = cells.flatMap(({ column, row }) => {
    const was = at(size ?? '', column, row);
    if (was === null) return [];
    const block = writeToken(change(was));
    const under = below(size ?? '', column, row);
    if (under !== null && writeToken(under) === block) return [];
    return [{ column, row, block, ...(size === null ? {} : { size }) }];
  });
  const single = [...rest, ...entries];
  if (single.length > 2000) return pattern;
  const same =
    single.length === setting.single.length && single.every((one) => setting.single.some((was) => equal(one, was)));
  return same ? pattern : withSetting(pattern, { single });
}

function equal(a: Setting['single'][number], b: Setting['single'][number]): boolean {
  return a.column === b.column && a.row === b.row && a.block === b.block && a.size === b.size;
}

function turned(by: Turn): (was: Token) => Token {
  return (was) => ({ ...was, turn: afterTurn(was.turn, by) });
}

export const turnBlocks: Edit<{ readonly cells: Cells; readonly by: Turn; readonly size: string | null }> = {
  id: 'turn-blocks',
  name: ({ cells, by }) => `${turnText(by)} ${blocksText(cells)}`,
  apply: (pattern, { cells, by, size }) => placed(pattern, cells, size, turned(by)),
};

export const placeBlocks: Edit<{ readonly cells: Cells; readonly block: string; readonly size: string | null }> = {
  id: 'place-blocks',
  name: ({ cells, block }) => `Put block ${block} in ${cells.length === 1 ? 'a place' : `${cells.length} places`}`,
  apply: (pattern, { cells, block, size }) => {
    if (!pattern.blocks.some(({ id }) => id === block)) return pattern;
    return placed(pattern, cells, size, (was) => ({ ...was, name: block }));
  },
};

/** Two blocks change places, each with the way it lies. */
export const swapBlocks: Edit<{ readonly a: Cell; readonly b: Cell; readonly size: string | null }> = {
  id: 'swap-blocks',
  name: () => 'Swap two blocks',
  apply: (pattern, { a, b, size }) => {
    const at = blockAt(pattern);
    const [one, other] = [at(size ?? '', a.column, a.row), at(size ?? '', b.column, b.row)];
    if (one === null || other === null) return pattern;
    return placed(
      placed(pattern, [a], size, () => other),
      [b],
      size,
      () => one,
    );
  },
};

export const returnToMotif: Edit<{ readonly cells: Cells; readonly size: string | null }> = {
  id: 'return-to-motif',
  name: ({ cells }) => `Return ${blocksText(cells)} to the motif`,
  apply: (pattern, { cells, size }) => {
    const goes = (one: Setting['single'][number]) =>
      (size === null || one.size === size) && cells.some(({ column, row }) => one.column === column && one.row === row);
    const single = pattern.setting.single.filter((one) => !goes(one));
    return single.length === pattern.setting.single.length ? pattern : withSetting(pattern, { single });
  },
};

/** Lays the blocks out by a classic setting; single blocks that differed from the motif before go with it. */
export const takeMotif: Edit<{
  readonly template: MotifTemplate;
  /** The letters of the blocks it is used with. */
  readonly blocks: readonly string[];
  /** Where the first block's dark half lies, for a setting of blocks that are split on the diagonal. */
  readonly dark: DarkCorner;
}> = {
  id: 'take-motif',
  name: ({ template }) => `Set the blocks in ${template.name.toLowerCase()}`,
  apply: (pattern, { template, blocks, dark }) => {
    const known = blocks.every((letter) => pattern.blocks.some(({ id }) => id === letter));
    const made = known ? motifFor(template, blocks, dark) : null;
    if (made === null) return pattern;
    const bare = without(without(pattern.setting, 'reflect'), 'reflected');
    return withFields(pattern, { setting: { ...bare, single: [], ...made } });
  },
};

export const setReflect: Edit<{
  readonly reflect: NonNullable<Setting['reflect']> | null;
  readonly reflected?: NonNullable<Setting['reflected']>;
}> = {
  id: 'set-reflect',
  name: ({ reflect }) => (reflect === null ? 'Start the motif in the corner' : 'Reflect the motif about the middle'),
  apply: (pattern, { reflect, reflected = 'mirrored' }) => {
    const as = reflect === null || reflected === 'mirrored' ? without(pattern.setting, 'reflected') : pattern.setting;
    const setting = reflect === null ? without(as, 'reflect') : withFields(as, { reflect });
    if (reflect === null || reflected === 'mirrored') return withFields(pattern, { setting });
    return withFields(pattern, { setting: withFields(setting, { reflected }) });
  },
};

export const setSewn: Edit<{
  /** Null: whichever sews better. */
  readonly sewn: 'rows' | 'columns' | null;
}> = {
  id: 'set-sewn',
  name: ({ sewn }) => (sewn === null ? 'Sew the blocks whichever way is better' : `Sew the blocks into ${sewn}`),
  apply: (pattern, { sewn }) => {
    const { setting } = pattern;
    if (setting.kind !== 'straight') return pattern;
    return withFields(pattern, { setting: sewn === null ? without(setting, 'sewn') : withFields(setting, { sewn }) });
  },
};

function withMotif(pattern: Pattern, change: (token: Token, cell: Cell) => Token): Pattern {
  const rows = readMotif(pattern.setting);
  const motif = rows.map((row, r) => {
    if (row.some((entry) => typeof entry === 'string')) return pattern.setting.motif[r] ?? '';
    return writeRow((row as readonly Token[]).map((token, column) => change(token, { column, row: r })));
  });
  const same = motif.every((line, r) => line === pattern.setting.motif[r]?.trim().replace(/\s+/g, ' '));
  return same ? pattern : withSetting(pattern, { motif });
}

function among(cells: Cells, cell: Cell): boolean {
  return cells.some(({ column, row }) => column === cell.column && row === cell.row);
}

export const turnMotif: Edit<{ readonly cells: Cells; readonly by: Turn }> = {
  id: 'turn-motif',
  name: ({ cells, by }) => `${turnText(by)} ${blocksText(cells)} of the motif`,
  apply: (pattern, { cells, by }) =>
    withMotif(pattern, (token, cell) => (among(cells, cell) ? turned(by)(token) : token)),
};

export const placeInMotif: Edit<{ readonly cells: Cells; readonly block: string }> = {
  id: 'place-in-motif',
  name: ({ block }) => `Put block ${block} in the motif`,
  apply: (pattern, { cells, block }) => {
    if (!pattern.blocks.some(({ id }) => id === block)) return pattern;
    return withMotif(pattern, (token, cell) => (among(cells, cell) ? { ...token, name: block } : token));
  },
};

export const resizeMotif: Edit<{ readonly columns: number; readonly rows: number }> = {
  id: 'resize-motif',
  name: ({ columns, rows }) => `Make the motif ${columns} by ${rows}`,
  apply: (pattern, { columns, rows }) => {
    const across = whole(columns, 1, 24);
    const down = whole(rows, 1, 24);
    const at = motifAt(pattern.setting);
    const blank: Token = { name: pattern.blocks[0]?.id ?? 'A', turn: UNTURNED };
    const motif = Array.from({ length: down }, (_, row) =>
      writeRow(Array.from({ length: across }, (__, column) => at(column, row) ?? blank)),
    );
    const was = readMotif(pattern.setting);
    const same = was.length === down && was.every((row) => row.length === across);
    return same ? pattern : withSetting(pattern, { motif });
  },
};
