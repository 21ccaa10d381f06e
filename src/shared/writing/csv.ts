/** One table as CSV (RFC 4180): every line ends with CRLF, the first names the columns. */
export function csvText(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  return [head, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}

/**
 * A designer's words that begin like a sum would be worked out as one by whoever opens the file in a spreadsheet, so they
 * are set off by an apostrophe.
 */
function cellText(cell: string | number): string {
  // Finer than any ruler, coarser than what binary fractions leave over: 4.5, never 4.500000000000001.
  if (typeof cell === 'number') return String(Number(cell.toFixed(6)));
  const safe = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
