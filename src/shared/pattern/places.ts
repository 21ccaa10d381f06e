import type { Setting, Size, StripsSetting } from './schema.ts';

type Counts = Pick<Size, 'across' | 'down'>;

/** A place of a block: counted from 0 at the left and the top. */
export interface BlockPlace {
  readonly column: number;
  readonly row: number;
}

/** How far one strip begins from the first, less whole blocks: a share of a block. */
export function shiftAt(setting: StripsSetting, strip: number): number {
  const [top = 0, bottom = 1] = (setting.shift ?? '0/1').split('/').map(Number);
  return ((strip * top) % bottom) / bottom;
}

/** How many blocks are made for one strip: those cut off at its ends count whole, those that plain pieces fill do not. */
function blocksInStrip(setting: StripsSetting, strip: number, places: number): number {
  if (shiftAt(setting, strip) === 0) return places;
  return setting.fill === undefined ? places + 1 : places - 1;
}

/** How many blocks a quilt of so many across and down has. */
export function blockCount(setting: Setting, { across, down }: Counts): number {
  if (setting.kind === 'straight') return across * down;
  if (setting.kind === 'on-point') return across * down + (across - 1) * (down - 1);
  const [strips, places] = setting.run === 'rows' ? [down, across] : [across, down];
  return Array.from({ length: strips }, (_, i) => blocksInStrip(setting, i, places)).reduce((a, b) => a + b, 0);
}

/**
 * Every place of a block in a quilt of so many across and down, row by row. On point those between stand in rows of their own:
 * the odd ones. In strips a place is counted along its strip.
 */
export function placesOf(setting: Setting, { across, down }: Counts): readonly BlockPlace[] {
  if (setting.kind === 'strips') return stripPlaces(setting, { across, down });
  const lengths =
    setting.kind === 'straight'
      ? Array.from({ length: down }, () => across)
      : Array.from({ length: 2 * down - 1 }, (_, row) => (row % 2 === 0 ? across : across - 1));
  return lengths.flatMap((many, row) => Array.from({ length: many }, (_, column) => ({ column, row })));
}

function stripPlaces(setting: StripsSetting, { across, down }: Counts): readonly BlockPlace[] {
  const rows = setting.run === 'rows';
  const [strips, places] = rows ? [down, across] : [across, down];
  return Array.from({ length: strips }, (_, strip) =>
    Array.from({ length: blocksInStrip(setting, strip, places) }, (__, at) =>
      rows ? { column: at, row: strip } : { column: strip, row: at },
    ),
  ).flat();
}

/** How many blocks stand in the row and in the column of a place, for motifs that are reflected about their middle. */
export function lengthsAt(setting: Setting, { across, down }: Counts, { column, row }: BlockPlace): Counts {
  if (setting.kind !== 'strips') return { across, down };
  return setting.run === 'rows'
    ? { across: blocksInStrip(setting, row, across), down }
    : { across, down: blocksInStrip(setting, column, down) };
}
