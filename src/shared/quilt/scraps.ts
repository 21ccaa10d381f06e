import type { Point } from '../drawing/turn.ts';
import type { Fabric } from '../pattern/schema.ts';
import type { Scrappy } from './quilt.ts';

/** For each scrappy fabric, by the place of a patch the number of its scrap, from 0. */
export type Scraps = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** The fabrics of a pattern that are made up of many, as a quilt carries them; nothing where there is none. */
export function scrappyIn(fabrics: readonly Fabric[]): { readonly scrappy?: readonly Scrappy[] } {
  const scrappy = fabrics.flatMap(({ id, scraps, spread = 0 }) =>
    scraps === undefined ? [] : [{ fabric: id, many: scraps.length, spread }],
  );
  return scrappy.length === 0 ? {} : { scrappy };
}

/** The name a patch goes by in one size: the middle of its corners in the quilt, thousandths of an inch. */
export function placeKey(outline: readonly Point[]): string {
  let [x, y] = [0, 0];
  for (const corner of outline) {
    x += corner.x;
    y += corner.y;
  }
  return `${Math.round((1000 * x) / outline.length)} ${Math.round((1000 * y) / outline.length)}`;
}

/** What a scrap of a fabric is called where fabrics are filled; no fabric has such an id. */
export function scrapFabric(fabric: string, scrap: number): string {
  return `${fabric}~${scrap}`;
}

/** The fabrics that pens fill by: a scrappy one and each of its scraps. */
export function withScraps<F extends Pick<Fabric, 'id' | 'colour'> & Partial<Pick<Fabric, 'scraps'>>>(
  fabric: F,
): readonly { readonly id: string; readonly colour: string }[] {
  const scraps = (fabric.scraps ?? []).map(({ colour }, i) => ({ id: scrapFabric(fabric.id, i), colour }));
  return [{ id: fabric.id, colour: fabric.colour }, ...scraps];
}
