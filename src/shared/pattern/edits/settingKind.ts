import { fractionOf } from '../../measure/fraction.ts';
import { readNumber } from '../../measure/read.ts';
import { readRow, writeRow } from '../../recipe/token.ts';
import type { Edit } from '../edit.ts';
import type { OnPointSetting, Pattern, Setting, StripsSetting } from '../schema.ts';
import { stripsSchema } from '../settingSchema.ts';
import { lengthWithin, withFields, without } from './list.ts';

const WIDEST_FLOAT = 24;

function onPoint(pattern: Pattern, change: (setting: OnPointSetting) => OnPointSetting): Pattern {
  const { setting } = pattern;
  return setting.kind === 'on-point' ? withFields(pattern, { setting: change(setting) }) : pattern;
}

function known(pattern: Pattern, fabric: string | null | undefined): boolean {
  return fabric === null || fabric === undefined || pattern.fabrics.some(({ id }) => id === fabric);
}

/** The rows of blocks between stand in rows of their own, so a place keeps its block by another row number. */
function singlesAs(setting: Setting, kind: Setting['kind']): Setting['single'] {
  if (setting.kind === kind) return setting.single;
  if (kind === 'on-point') return setting.single.map((one) => ({ ...one, row: one.row * 2 }));
  if (setting.kind !== 'on-point') return setting.single;
  return setting.single.filter(({ row }) => row % 2 === 0).map((one) => ({ ...one, row: one.row / 2 }));
}

function shared(
  setting: Setting,
  kind: Setting['kind'],
): Pick<Setting, 'motif' | 'single' | 'reflect' | 'reflected' | 'sashing'> {
  const { motif, reflect, reflected, sashing } = setting;
  return {
    motif,
    single: singlesAs(setting, kind),
    ...(reflect === undefined ? {} : { reflect }),
    ...(reflected === undefined ? {} : { reflected }),
    ...(sashing === undefined ? {} : { sashing }),
  };
}

/** A setting of the kind asked for, as the pattern had it last: what only that kind has is taken from it again. */
type Before = { readonly was?: Setting | undefined };

/** Whether rows of a motif name blocks that are still there. */
function isSound(rows: readonly string[], { blocks }: Pattern): boolean {
  const ids = new Set(blocks.map(({ id }) => id));
  return rows.map(readRow).every((row) => row.every((entry) => typeof entry !== 'string' && ids.has(entry.name)));
}

export const setStraight: Edit<Before> = {
  id: 'set-straight',
  name: () => 'Set the blocks straight',
  apply: (pattern, { was }) => {
    const { setting } = pattern;
    if (setting.kind === 'straight') return pattern;
    const sewn = was?.kind === 'straight' && was.sewn !== undefined ? { sewn: was.sewn } : {};
    return { ...pattern, setting: { kind: 'straight', ...shared(setting, 'straight'), ...sewn } };
  },
};

export const setMedallion: Edit<{ readonly block: string }> = {
  id: 'set-medallion',
  name: ({ block }) => `Begin a medallion with block ${block}`,
  apply: (pattern, { block }) => {
    if (!pattern.blocks.some(({ id }) => id === block)) return pattern;
    const sizes = pattern.sizes.map((size) => withFields(size, { across: 1, down: 1 }));
    return { ...pattern, setting: { kind: 'straight', motif: [block], single: [] }, sizes };
  },
};

export const setOnPoint: Edit<Before & { readonly fabric: string }> = {
  id: 'set-on-point',
  name: () => 'Set the blocks on point',
  apply: (pattern, { fabric, was }) => {
    const { setting } = pattern;
    if (setting.kind === 'on-point' || !known(pattern, fabric)) return pattern;
    const all = { ...shared(setting, 'on-point'), triangles: { fabric } };
    const again = was?.kind === 'on-point' ? onPointAgain(pattern, was, all) : all;
    return { ...pattern, setting: { kind: 'on-point', ...again } };
  },
};

type OnPoint = Omit<OnPointSetting, 'kind'>;

/** Triangles, blocks between and single places between as they were; what names a fabric or a block that is gone is not. */
function onPointAgain(pattern: Pattern, { triangles, between, single }: OnPointSetting, now: OnPoint): OnPoint {
  const fabrics = known(pattern, triangles.fabric) && known(pattern, triangles.corners);
  const inBetween = single.filter(({ row, block }) => row % 2 === 1 && isSound([block], pattern));
  return {
    ...now,
    single: [...now.single, ...inBetween],
    ...(fabrics ? { triangles } : {}),
    ...(between !== undefined && isSound(between, pattern) ? { between } : {}),
  };
}

export const setStrips: Edit<Before & { readonly run: StripsSetting['run'] }> = {
  id: 'set-strips',
  name: ({ run }) => `Set the blocks in strips, in ${run}`,
  apply: (pattern, { run, was }) => {
    const { setting } = pattern;
    if (setting.kind === 'strips') return withFields(pattern, { setting: withFields(setting, { run }) });
    const { shift, fill } = was?.kind === 'strips' ? was : {};
    const again = {
      ...(shift === undefined ? {} : { shift }),
      ...(fill === undefined || !known(pattern, fill) ? {} : { fill }),
    };
    return { ...pattern, setting: { kind: 'strips', run, ...shared(setting, 'strips'), ...again } };
  },
};

export const setShift: Edit<{
  /** Null: not shifted. */
  readonly shift: string | null;
  /** Null: blocks are cut off. */
  readonly fill?: string | null;
}> = {
  id: 'set-shift',
  name: ({ shift }) =>
    shift === null
      ? 'Do not shift the strips'
      : `Shift every strip by ${fractionOf(readNumber(shift) ?? 0)} of a block`,
  apply: (pattern, { shift, fill }) => {
    const { setting } = pattern;
    const part = shift === null ? null : stripsSchema.shape.shift.safeParse(shift);
    if (setting.kind !== 'strips' || !known(pattern, fill) || part?.success === false) return pattern;
    const ended = fill === null ? without(setting, 'fill') : setting;
    const filled = typeof fill === 'string' ? withFields(ended, { fill }) : ended;
    const own = shift === null ? without(filled, 'shift') : withFields(filled, { shift });
    return withFields(pattern, { setting: own });
  },
};

type Triangles = OnPointSetting['triangles'];

export const setTriangles: Edit<{
  readonly fabric?: string;
  /** Null: as the side triangles. */
  readonly corners?: string | null;
  readonly fit?: NonNullable<Triangles['fit']>;
  readonly float?: number;
}> = {
  id: 'set-triangles',
  name: ({ fit, float }) => {
    if (fit === undefined && float === undefined) return 'Change the fabric of the setting triangles';
    return fit === undefined || fit === 'floating' ? 'Let the blocks float' : 'Let the triangles end at the blocks';
  },
  apply: (pattern, { fabric, corners, fit, float }) => {
    if (!known(pattern, fabric) || !known(pattern, corners)) return pattern;
    const far = float === undefined ? undefined : lengthWithin(float, 1 / 16, WIDEST_FLOAT);
    if (far === null) return pattern;
    return onPoint(pattern, (setting) => {
      const was = corners === null ? without(setting.triangles, 'corners') : setting.triangles;
      const fields: Partial<Triangles> = {
        ...(fabric === undefined ? {} : { fabric }),
        ...(typeof corners === 'string' ? { corners } : {}),
        ...(far === undefined ? {} : { float: far }),
        ...(fit === undefined || fit === 'rounded-up' ? {} : { fit }),
      };
      const as = fit === 'rounded-up' ? without(was, 'fit') : was;
      return withFields(setting, { triangles: withFields(as, fields) });
    });
  },
};

export const setBetween: Edit<{ readonly motif: readonly string[] | null }> = {
  id: 'set-between',
  name: ({ motif }) => (motif === null ? 'Give the blocks between the same motif' : 'Change the blocks between'),
  apply: (pattern, { motif }) =>
    onPoint(pattern, (setting) => {
      if (motif === null) return without(setting, 'between');
      const rows = motif.map(readRow);
      const blocks = new Set(pattern.blocks.map(({ id }) => id));
      const sound = rows.every(
        (row) =>
          row.length > 0 &&
          row.length === rows[0]?.length &&
          row.every((entry) => typeof entry !== 'string' && blocks.has(entry.name)),
      );
      if (!sound || rows.length === 0 || rows.length > 24) return setting;
      const between = rows.map((row) => writeRow(row.filter((entry) => typeof entry !== 'string')));
      const same =
        between.length === setting.between?.length && between.every((row, i) => row === setting.between?.[i]);
      return same ? setting : { ...setting, between };
    }),
};
