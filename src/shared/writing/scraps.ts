import { scrapCounts, scrapsIn } from '../diagrams/scraps.ts';
import { count } from '../measure/traced.ts';
import type { Fabric } from '../pattern/schema.ts';
import { scrapFabric } from '../quilt/scraps.ts';
import type { Block, ChartRow } from './book.ts';
import type { Desk } from './desk.ts';
import { field } from './words.ts';

/** For each scrappy fabric, how many patches of each of its fabrics the quilt as drawn has, size by size. */
export function scrapCharts(desk: Desk): readonly Block[] {
  return desk.pattern.fabrics.flatMap((fabric) =>
    fabric.scraps === undefined ? [] : [{ kind: 'chart', chart: scrapChart(desk, fabric, fabric.scraps) }],
  );
}

function scrapChart({ sizes, blocks }: Desk, { id, name }: Fabric, scraps: NonNullable<Fabric['scraps']>) {
  const counts = sizes.map(({ quilt }) => scrapCounts(scrapsIn(quilt, blocks), id, scraps.length));
  const rows = scraps.map(
    (scrap, i): ChartRow => ({
      swatch: scrapFabric(id, i),
      cells: [[{ strong: scrap.name }], ...counts.map((own) => [field(count(own[i] ?? 0, 'patches'))])],
    }),
  );
  return {
    id: `scraps-${id}`,
    title: `${name}: patches of each fabric, as drawn`,
    columns: [
      { title: 'Fabric', align: 'left' as const, share: 4 },
      ...sizes.map(({ size }) => ({ title: size.name, align: 'left' as const, share: 2 })),
    ],
    rows,
  };
}
