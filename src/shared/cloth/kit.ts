import { clothStep } from '../measure/metric.ts';
import { count, given, inYards, named, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import type { Cloth } from './cloth.ts';
import { type Cost, costOf } from './cost.ts';

/** One fabric of a kit. */
export interface KitCloth {
  readonly fabric: string;
  /** What it is for; "backing" when it is that. */
  readonly uses: readonly string[];
  /** Cut for one kit: what the pattern asks for. */
  readonly each: Traced;
  /** Taken from the bolt for all kits, with one squaring up at its start. */
  readonly bolt: Traced;
}

/** What a shop needs to put kits together. */
export interface KitSheet {
  readonly kits: number;
  /** In the order in which they are cut: the longest cuts first, so that a short bolt is found out early. */
  readonly cloth: readonly KitCloth[];
  /** Bundles in all kits. */
  readonly bundles: number;
  /** What lies in one kit, in the pattern's order. */
  readonly contents: readonly string[];
  readonly costEach: Cost | null;
  readonly costAll: Traced | null;
}

/**
 * The sheet for so many kits of one size: a piece of each fabric as long as the pattern asks for, cut one after another
 * from a bolt that is squared up once. Each piece carries its own squaring already, because its maker squares it up again.
 * @param bundles bundles in one kit
 */
export function kitSheet(cloth: Cloth, pattern: Pattern, kits: number, bundles = 0): KitSheet {
  const own = cloth.needs
    .filter(({ yards }) => yards.value > 0)
    .map(({ fabric, uses, yards }) => kitCloth(fabric, uses, yards, kits, pattern));
  const { backing } = cloth;
  const all = [...own, kitCloth(backing.fabric, ['backing'], backing.yards, kits, pattern)];
  const costEach = costOf(cloth, pattern, bundles);
  return {
    kits,
    cloth: [...all].sort((a, b) => b.each.value - a.each.value),
    bundles: bundles * kits,
    contents: [
      ...cloth.needs.flatMap(({ fabric, sheets }) =>
        sheets === undefined ? [] : [sheetWords(fabric, sheets.count, pattern)],
      ),
      ...(bundles > 0 ? [`${bundles} ${bundles === 1 ? 'bundle' : 'bundles'} of strips`] : []),
      ...all.map(nameOf(pattern)),
    ],
    costEach,
    costAll: costEach === null ? null : times(count(kits, 'kits'), costEach.total),
  };
}

function kitCloth(fabric: string, uses: readonly string[], each: Traced, kits: number, { house }: Pattern): KitCloth {
  const cut = times(count(kits, kits === 1 ? 'kit' : 'kits'), named(each, 'each'));
  const bolt =
    house.squaring === 0 ? cut : plus(cut, named(inYards(given(house.squaring, 'squaring up')), 'squaring up'));
  return { fabric, uses, each, bolt: rounded(bolt, clothStep(house), 'up') };
}

/** "3 fat quarters of Sand". */
function sheetWords(fabric: string, many: Traced, { fabrics }: Pattern): string {
  return `${many.value} ${many.name} of ${fabrics.find(({ id }) => id === fabric)?.name ?? fabric}`;
}

function nameOf({ fabrics }: Pattern): (cloth: KitCloth) => string {
  return ({ fabric, uses }) => {
    const name = fabrics.find(({ id }) => id === fabric)?.name ?? fabric;
    return `${name}, for ${uses.join(', ')}`;
  };
}
