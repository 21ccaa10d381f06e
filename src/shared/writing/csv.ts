/** One table as CSV (RFC 4180): every line ends with CRLF, the first names the columns. */
export function csvText(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [head, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

/**
 * A designer's words that begin like a sum would be worked out as one by whoever opens the file in a spreadsheet, so they
 * are set off by an apostrophe.
 */
function cellText(cell: string | number): string {
  if (typeof cell === 'number') return String(cell);
  const safe = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
