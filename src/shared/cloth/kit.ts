import { clothStep } from '../measure/metric.ts';
import { count, given, inYards, named, plus, rounded, type Traced, times } from '../measure/traced.ts';
import type { Pattern } from '../pattern/schema.ts';
import { isSquares } from './bundle/squares.ts';
import type { Cloth } from './cloth.ts';
import { type Cost, costOf } from './cost.ts';

/** One fabric of a kit, cut from the bolt. */
export interface KitCloth {
  readonly fabric: string;
  /** What it is for; "backing" when it is that. */
  readonly uses: readonly string[];
  /** Cut for one kit: what the pattern asks for. */
  readonly each: Traced;
  /** Taken from the bolt for all kits, with one squaring up at its start. */
  readonly bolt: Traced;
  /** How wide the bolt must be when it is not cloth as usual: wide backing. */
  readonly wide?: Traced;
}

/** What is not cut from a bolt: sheets of a fabric, or bundles. */
export interface KitCount {
  /** A fabric's id; null for bundles. */
  readonly fabric: string | null;
  /** "fat quarters", "bundles of strips". */
  readonly what: string;
  readonly each: Traced;
  readonly all: Traced;
}

/** One thing that lies in a kit: so much of what. */
export interface KitItem {
  readonly amount: Traced;
  readonly what: string;
}

/** What a shop needs to put kits together. */
export interface KitSheet {
  readonly kits: number;
  /** In the order in which they are cut: the longest cuts first, so that a short bolt is found out early. */
  readonly cloth: readonly KitCloth[];
  /** What is counted out and not cut. */
  readonly counted: readonly KitCount[];
  /** What lies in one kit, in the pattern's order. */
  readonly contents: readonly KitItem[];
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
  const back = kitCloth(backing.fabric, ['backing'], backing.yards, kits, pattern);
  const all = [...own, backing.cloth === 'wide' ? { ...back, wide: backing.usableWidth } : back];
  const counted = countedOut(cloth, pattern, kits, bundles);
  const costEach = costOf(cloth, pattern, bundles);
  return {
    kits,
    cloth: [...all].sort((a, b) => b.each.value - a.each.value),
    counted,
    contents: [...counted.map((one) => countItem(one, pattern)), ...all.map((one) => clothItem(one, pattern))],
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

function countedOut(cloth: Cloth, { bundle }: Pattern, kits: number, bundles: number): readonly KitCount[] {
  const inAll = (each: Traced) => times(count(kits, kits === 1 ? 'kit' : 'kits'), named(each, 'each'));
  const sheets = cloth.needs.flatMap(({ fabric, sheets: own }): KitCount[] =>
    own === undefined ? [] : [{ fabric, what: own.count.name ?? own.name, each: own.count, all: inAll(own.count) }],
  );
  if (bundles === 0 || bundle === undefined) return sheets;
  const each = count(bundles, bundles === 1 ? 'bundle' : 'bundles');
  const what = `${each.name} of ${isSquares(bundle) ? 'squares' : 'strips'}`;
  return [{ fabric: null, what, each, all: inAll(each) }, ...sheets];
}

/** "3 fat quarters of Sand", "1 bundle of strips". */
function countItem({ fabric, what, each }: KitCount, pattern: Pattern): KitItem {
  return { amount: each, what: fabric === null ? what : `${what} of ${nameOf(fabric, pattern)}` };
}

/** "1¾ yd Foam, for blocks"; "2½ yd Foam, wide cloth, for backing". */
function clothItem({ fabric, uses, each, wide }: KitCloth, pattern: Pattern): KitItem {
  const cloth = wide === undefined ? '' : ', wide cloth';
  return { amount: each, what: `${nameOf(fabric, pattern)}${cloth}, for ${uses.join(', ')}` };
}

function nameOf(id: string, { fabrics }: Pattern): string {
  return fabrics.find((fabric) => fabric.id === id)?.name ?? id;
}
