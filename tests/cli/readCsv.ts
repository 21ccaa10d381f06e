/** Rows of a CSV text (RFC 4180) as entries by the names of its columns. */
export function readCsv(text: string): readonly Readonly<Record<string, string>>[] {
  const [head = [], ...rows] = text.split('\r\n').slice(0, -1).map(cells);
  return rows.map((row) => {
    if (row.length !== head.length) throw new Error(`A row of ${row.length} cells under a head of ${head.length}`);
    return Object.fromEntries(head.map((name, i) => [name, row[i] ?? '']));
  });
}

function cells(line: string): readonly string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, bare]) => quoted?.replaceAll('""', '"') ?? bare ?? '',
  );
}
