import type { Box } from '../drawing/turn.ts';
import { turnSize } from '../drawing/turn.ts';
import type { Finding } from '../measure/finding.ts';
import type { GridBody } from '../recipe/schema.ts';
import { readRow, type Token } from '../recipe/token.ts';
import { lowerCell } from './lowerCell.ts';
import { amountOf, complain, type Lowering } from './lowering.ts';
import type { Part } from './piecing.ts';
import { type LooseLeaf, placeSub, renumber, type Sub, turnSub } from './sub.ts';

/** A grid of cells: the cells of a row are sewn together, then the rows. Null with complaints when it cannot be. */
export function lowerGrid(on: Lowering, body: GridBody): Sub | null {
  const columns = body.columns.map((amount, i) => amountOf(on, amount, `body.columns[${i}]`));
  const rows = body.rows.map((amount, i) => amountOf(on, amount, `body.rows[${i}]`));
  if (columns.includes(null) || rows.includes(null)) return null;
  const widths = columns as number[];
  const heights = rows as number[];
  const tokens = layoutOf(on, body);
  if (tokens === null) return null;
  const cells = tokens.map((row, r) =>
    row.map((token, c) => cellAt(on, body, token, [widths[c] as number, heights[r] as number], [r, c])),
  );
  if (cells.some((row) => row.includes(null))) return null;
  return assemble(cells as Sub[][], widths, heights);
}

/** The layout read, with as many rows and entries as the grid has; null with complaints otherwise. */
function layoutOf(on: Lowering, body: GridBody): Token[][] | null {
  const before = on.findings.length;
  if (body.layout.length !== body.rows.length) {
    complain(
      on,
      `The grid has ${body.rows.length} rows and the layout ${body.layout.length}.`,
      'body.layout',
      'Give one line for each row.',
    );
  }
  const tokens = body.layout.map((line, r) => {
    const row = readRow(line);
    if (row.length !== body.columns.length) {
      const what = row.length < body.columns.length ? 'leaves a gap' : 'is too long';
      complain(
        on,
        `Row ${r + 1} of the layout ${what}: ${row.length} entries for ${body.columns.length} columns.`,
        `body.layout[${r}]`,
      );
    }
    for (const entry of row) {
      const name = typeof entry === 'string' ? entry : entry.name;
      if (typeof entry === 'string')
        complain(on, `“${entry}” is not an entry such as A, A:90 or A:m180.`, `body.layout[${r}]`);
      else if (body.key[name] === undefined)
        complain(on, `The key has no “${name}”.`, `body.layout[${r}]`, 'Add it to the key.');
    }
    return row;
  });
  return on.findings.length > before ? null : (tokens as Token[][]);
}

function cellAt(
  on: Lowering,
  body: GridBody,
  token: Token,
  [width, height]: [number, number],
  [row, column]: [number, number],
): Sub | null {
  const cell = body.key[token.name];
  if (cell === undefined) return null;
  const lying = turnSize(width, height, token.turn);
  const where = `body.key.${token.name}`;
  // What is wrong with the cell itself is told with the place it stands in, once for all places it is wrong in alike.
  const own: Finding[] = [];
  const sub = lowerCell({ ...on, findings: own }, cell, lying.width, lying.height, where);
  if (sub === null && own.length === 0) complain(on, `“${token.name}” cannot be made.`, `body.layout[${row}]`);
  const turned = token.turn.quarters % 2 === 1 ? ', turned a quarter' : '';
  for (const { what, ...finding } of own) {
    if (on.findings.some((known) => known.where.path === finding.where.path && known.what.startsWith(what))) continue;
    const itself = finding.where.path.endsWith(where);
    const place = itself ? ` It stands in row ${row + 1}, column ${column + 1}${turned}.` : '';
    on.findings.push({ ...finding, what: `${what}${place}` });
  }
  return sub === null ? null : turnSub(sub, token.turn);
}

function assemble(cells: readonly (readonly Sub[])[], widths: readonly number[], heights: readonly number[]): Sub {
  const polygons: Sub['polygons'][number][] = [];
  const sum = (lengths: readonly number[], upTo: number) => lengths.slice(0, upTo).reduce((a, b) => a + b, 0);
  const width = sum(widths, widths.length);
  const rows = cells.map((row, r): Part<LooseLeaf> => {
    const y = sum(heights, r);
    const parts = row.map((sub, c) => {
      const placed = placeSub(sub, 1, sum(widths, c), y);
      const root = renumber(placed.root, polygons.length);
      polygons.push(...placed.polygons);
      return root;
    });
    return joined('across', parts, { x: 0, y, width, height: heights[r] as number });
  });
  const height = sum(heights, heights.length);
  return { width, height, polygons, root: joined('down', rows, { x: 0, y: 0, width, height }) };
}

/** A row of one part is that part. */
function joined(along: 'across' | 'down', parts: readonly Part<LooseLeaf>[], box: Box): Part<LooseLeaf> {
  const [only] = parts;
  return parts.length === 1 && only !== undefined ? only : { kind: 'row', along, parts, box };
}
