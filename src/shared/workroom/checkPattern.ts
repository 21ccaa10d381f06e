import type { Finding } from '../measure/finding.ts';
import { same } from '../measure/inches.ts';
import type { Pattern } from '../pattern/schema.ts';
import { borderFabrics, settingFabrics } from '../pattern/settingFabrics.ts';
import { usedBlocks } from '../pattern/usedBlocks.ts';
import { borderWidths } from '../quilt/growing.ts';
import { readRow, readToken } from '../recipe/token.ts';
import { bundleFabrics } from './bundles.ts';

function stops(what: string, path: string, mend?: string, size?: string): Finding {
  return {
    level: 'stops',
    what,
    where: { path, ...(size === undefined ? {} : { size }) },
    ...(mend === undefined ? {} : { mend }),
  };
}

/**
 * What is wrong in a pattern's own choices, before anything is drawn: names given twice, names of things that are not
 * there, a motif that cannot be read.
 */
export function checkPattern(pattern: Pattern): readonly Finding[] {
  return [
    ...twice(
      pattern.recipes.map(({ id }) => id),
      'recipes',
      'recipe',
    ),
    ...twice(
      pattern.blocks.map(({ id }) => id),
      'blocks',
      'block',
    ),
    ...twice(
      pattern.fabrics.map(({ id }) => id),
      'fabrics',
      'fabric',
    ),
    ...twice(
      pattern.borders.map(({ id }) => id),
      'borders',
      'border',
    ),
    ...twice(
      pattern.sizes.map(({ id }) => id),
      'sizes',
      'size',
    ),
    ...sizeNames(pattern),
    ...motif(pattern),
    ...fabrics(pattern),
    ...bundleFabrics(pattern),
    ...sizes(pattern),
    ...unevenBorders(pattern),
    ...throughSashing(pattern),
    ...singleSizes(pattern),
    ...unusedBlocks(pattern),
  ];
}

function twice(ids: readonly string[], path: string, what: string): readonly Finding[] {
  return ids.flatMap((id, i) =>
    ids.indexOf(id) === i
      ? []
      : [stops(`The ${what} “${id}” is given twice.`, `${path}[${i}].id`, 'Rename one of them.')],
  );
}

function sizeNames(pattern: Pattern): readonly Finding[] {
  const names = pattern.sizes.map(({ name }) => name);
  return names.flatMap((name, i) =>
    names.indexOf(name) === i
      ? []
      : [stops(`Two sizes are called ${name}.`, `sizes[${i}].name`, 'Rename one of them.')],
  );
}

function motif(pattern: Pattern): readonly Finding[] {
  const { setting } = pattern;
  const letters = new Set(pattern.blocks.map(({ id }) => id));
  const between = setting.kind === 'on-point' ? (setting.between ?? []) : [];
  const singles = setting.single.flatMap(({ block }, i) => {
    const token = readToken(block);
    return entryFinding(token?.name ?? block, token === null, letters, `setting.single[${i}].block`);
  });
  const inBorders = pattern.borders.flatMap(({ pieced }, i) => {
    if (pieced === undefined) return [];
    const at = `borders[${i}].pieced`;
    const corner = pieced.corner === undefined ? [] : motifRows([pieced.corner], `${at}.corner`, letters);
    return [...motifRows([pieced.units], `${at}.units`, letters), ...corner];
  });
  return [
    ...motifRows(setting.motif, 'setting.motif', letters),
    ...motifRows(between, 'setting.between', letters),
    ...singles,
    ...inBorders,
  ];
}

function motifRows(motif: readonly string[], at: string, letters: ReadonlySet<string>): readonly Finding[] {
  const rows = motif.map(readRow);
  const width = rows[0]?.length ?? 0;
  return rows.flatMap((row, r) => {
    const path = `${at}[${r}]`;
    if (row.length === 0) return [stops(`Row ${r + 1} of the motif is empty.`, path)];
    if (row.length !== width)
      return [stops(`Row ${r + 1} of the motif has ${row.length} blocks, the first ${width}.`, path)];
    return row.flatMap((entry) =>
      entryFinding(typeof entry === 'string' ? entry : entry.name, typeof entry === 'string', letters, path),
    );
  });
}

function entryFinding(name: string, misspelt: boolean, letters: ReadonlySet<string>, path: string): readonly Finding[] {
  if (misspelt) return [stops(`“${name}” is not a block and a turn, such as A, A:90 or A:m180.`, path)];
  return letters.has(name) ? [] : [stops(`The motif asks for block ${name}, which the pattern has not.`, path)];
}

function fabrics(pattern: Pattern): readonly Finding[] {
  const known = new Set(pattern.fabrics.map(({ id }) => id));
  const asked = [
    ...pattern.borders.flatMap((border, i) => borderFabrics(border, `borders[${i}]`)),
    ...settingFabrics(pattern.setting),
    { fabric: pattern.binding.fabric, name: 'the binding', path: 'binding.fabric' },
    { fabric: pattern.backing.fabric, name: 'the backing', path: 'backing.fabric' },
  ];
  return asked.flatMap(({ fabric, name, path }) =>
    known.has(fabric)
      ? []
      : [stops(`No fabric for ${name}: the pattern has no fabric “${fabric}”.`, path, 'Choose a fabric for it.')],
  );
}

/** Single blocks for a size that is not there; a place that no size reaches is only waiting for one that does. */
function singleSizes({ setting, sizes: all }: Pattern): readonly Finding[] {
  const known = new Set(all.map(({ id }) => id));
  return setting.single.flatMap(({ size }, i) =>
    size === undefined || known.has(size)
      ? []
      : [stops(`A single block is for the size “${size}”, which the pattern has not.`, `setting.single[${i}].size`)],
  );
}

function sizes(pattern: Pattern): readonly Finding[] {
  const borders = new Set(pattern.borders.map(({ id }) => id));
  return pattern.sizes.flatMap((size, i) =>
    Object.keys(size.borders).flatMap((id) =>
      borders.has(id)
        ? []
        : [
            stops(
              `${size.name} widens the border “${id}”, which the pattern has not.`,
              `sizes[${i}].borders.${id}`,
              undefined,
              size.name,
            ),
          ],
    ),
  );
}

/** Blocks that stand nowhere: nothing of them is cut or printed. */
function unusedBlocks(pattern: Pattern): readonly Finding[] {
  const used = usedBlocks(pattern);
  return pattern.blocks.flatMap(({ id, name }, i): Finding[] => {
    if (used.has(id)) return [];
    const what = `Block ${id}, ${name}, stands nowhere in the quilt: it is not cut and not printed.`;
    const mend = 'Put it into the motif or a border, or remove it.';
    return [{ level: 'note', what, where: { path: `blocks[${i}]`, on: id }, mend }];
  });
}

/** Between strips sashing runs through, so there is no place for a cornerstone. */
function throughSashing({ setting }: Pattern): readonly Finding[] {
  if (setting.kind !== 'strips' || setting.sashing?.cornerstones === undefined) return [];
  const what = 'Between strips of blocks the sashing runs through: its cornerstones are left out.';
  return [{ level: 'note', what, where: { path: 'setting.sashing.cornerstones' } }];
}

/** Borders that ask for corners or units that strips of two widths cannot have. */
function unevenBorders(pattern: Pattern): readonly Finding[] {
  return pattern.sizes.flatMap((size, i) =>
    pattern.borders.flatMap((border): Finding[] => {
      const { sides, ends } = borderWidths(border, size);
      if (same(sides, ends) || (border.pieced === undefined && border.corners !== 'mitred')) return [];
      const instead =
        border.pieced === undefined
          ? 'cannot be mitred there; its corners are butted'
          : 'is made of blocks, so the width of its sides counts';
      const what = `${border.name} is not as wide at the top as at the sides in ${size.name}: it ${instead}.`;
      const where = { path: `sizes[${i}].borderEnds.${border.id}`, size: size.name };
      return [{ level: 'look', what, where, mend: 'Give it one width all round.' }];
    }),
  );
}
