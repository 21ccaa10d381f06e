import { readRow, readToken } from '../recipe/token.ts';
import type { Pattern } from './schema.ts';

/** The letters of the blocks that stand anywhere: in the motif, between, as single ones, or in a border. */
export function usedBlocks({ setting, borders }: Pick<Pattern, 'setting' | 'borders'>): ReadonlySet<string> {
  const between = setting.kind === 'on-point' ? (setting.between ?? []) : [];
  const rows = [
    ...setting.motif,
    ...between,
    ...borders.flatMap(({ pieced }) => (pieced === undefined ? [] : pieced.units)),
  ];
  const corners = borders.flatMap(({ pieced }) => pieced?.corner ?? []);
  const single = [...setting.single.map(({ block }) => block), ...corners].map(readToken);
  const entries = [...rows.flatMap(readRow), ...single];
  return new Set(entries.flatMap((entry) => (entry === null || typeof entry === 'string' ? [] : [entry.name])));
}
