/** A column of a plain-text table. */
export interface Column {
  readonly title: string;
  readonly align?: 'left' | 'right';
}

/** A row of cells, or words that stand over the rows below them. */
export type Row = readonly string[] | { readonly group: string };

const GAP = '  ';

/**
 * A table set in letters of one width: columns as wide as their longest cell, a rule under the titles.
 * @param indent spaces before every line
 */
export function tableText(columns: readonly Column[], rows: readonly Row[], indent = 2): string {
  const cells = rows.map((row) => (isGroup(row) ? row : row.map(oneLine)));
  const widths = columns.map(({ title }, i) =>
    Math.max(letters(title), ...cells.map((row) => (isGroup(row) ? 0 : letters(row[i] ?? '')))),
  );
  const line = (texts: readonly string[]) =>
    columns.map(({ align }, i) => padded(texts[i] ?? '', widths[i] ?? 0, align ?? 'left')).join(GAP);
  const titled = columns.some(({ title }) => title !== '');
  const head = titled
    ? [line(columns.map(({ title }) => title)), widths.map((width) => '─'.repeat(width)).join(GAP)]
    : [];
  const body = cells.map((row) => (isGroup(row) ? oneLine(row.group) : line(row)));
  return [...head, ...body].map((text) => `${' '.repeat(indent)}${text}`.trimEnd()).join('\n');
}

function isGroup(row: Row): row is { readonly group: string } {
  return 'group' in row;
}

function oneLine(text: string): string {
  return text.replace(/\s+/gu, (space) => (space === '\u2009' ? space : ' '));
}

/** Letters as a terminal counts them: an accent set on its letter takes no room of its own. */
export function letters(text: string): number {
  return [...text.replace(/\p{M}/gu, '')].length;
}

function padded(text: string, width: number, align: 'left' | 'right'): string {
  const room = ' '.repeat(Math.max(0, width - letters(text)));
  return align === 'right' ? room + text : text + room;
}

/**
 * How a list of things that each want a column is shared out over tables that fit a width.
 * @param room letters of the first column, of each other column at most, and of the whole
 */
export function sizesPerTable(
  things: readonly unknown[],
  room: { readonly first: number; readonly each: number; readonly width: number },
): readonly { readonly from: number; readonly to: number }[] {
  const each = room.each + GAP.length;
  const fit = Math.max(1, Math.floor((room.width - room.first - 2) / each));
  return Array.from({ length: Math.ceil(things.length / fit) }, (_, i) => ({ from: i * fit, to: (i + 1) * fit }));
}
