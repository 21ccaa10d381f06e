import type { Ink } from '../../shared/diagrams/figure.ts';
import type { Chart, ChartRow } from '../../shared/writing/book.ts';
import { FabricSwatch } from '../parts/FabricSwatch.tsx';
import { BookWords } from './BookWords.tsx';
import styles from './sewing.module.css';

interface BookChartProps {
  readonly chart: Chart;
  readonly inks: readonly Ink[];
}

/** A chart of the written pattern. */
export function BookChart({ chart, inks }: BookChartProps) {
  return (
    <table className={styles.chart}>
      {chart.title === undefined ? null : <caption>{chart.title}</caption>}
      <thead>
        <tr>
          {chart.columns.map(({ title, align }, i) => {
            // A column of names needs no head, and an empty head would be read out as one.
            const Head = title === '' ? 'td' : 'th';
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: the columns are one fixed list that is replaced whole
              <Head key={i} {...(title === '' ? {} : { scope: 'col' })} data-align={align}>
                {title}
              </Head>
            );
          })}
        </tr>
      </thead>
      <tbody>
        {chart.rows.map((row, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: as above
          <Row key={i} row={row} chart={chart} inks={inks} />
        ))}
      </tbody>
    </table>
  );
}

function Row({ row, chart, inks }: { readonly row: ChartRow } & BookChartProps) {
  const fabric = row.group?.fabric ?? row.swatch;
  const colour = inks.find((ink) => ink.fabric === fabric)?.colour;
  const swatch = colour === undefined ? null : <FabricSwatch colour={colour} name={fabric ?? ''} bare />;
  if (row.group !== undefined) {
    return (
      <tr>
        <th scope="rowgroup" colSpan={chart.columns.length}>
          {swatch} <BookWords words={row.cells[0] ?? []} />
        </th>
      </tr>
    );
  }
  return (
    <tr>
      {row.cells.map((cell, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the cells are one fixed list that is replaced whole
        <td key={i} data-align={chart.columns[i]?.align}>
          {i === 0 ? swatch : null} <BookWords words={cell} />
        </td>
      ))}
    </tr>
  );
}
