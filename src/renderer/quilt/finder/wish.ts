import { CENTIMETRE, type Units } from '../../../shared/measure/metric.ts';
import type { Ruler } from '../../../shared/measure/ruler.ts';
import type { Mattress } from '../../../shared/pattern/mattresses.ts';
import { bedTarget, plainTarget, type Target } from '../../../shared/quilt/find/target.ts';

/** What a size is looked for. */
export interface Wish {
  readonly for: 'bed' | 'measure' | 'bundle';
  /** The mattress's id. */
  readonly bed: string;
  readonly drop: number;
  readonly tuck: number;
  readonly width: number;
  readonly height: number;
}

const CM = CENTIMETRE;

/** A drop that covers the mattress's side and a tuck for one row of pillows: common practice, from memory. */
const FIRST_WISHES: Readonly<Record<Units, Wish>> = {
  inches: { for: 'bed', bed: 'queen', drop: 12, tuck: 0, width: 60, height: 80 },
  centimetres: { for: 'bed', bed: 'queen', drop: 30 * CM, tuck: 0, width: 150 * CM, height: 200 * CM },
};

/** What is asked for until the designer says otherwise, in round numbers of the ruler. */
export function firstWish({ units }: Ruler): Wish {
  return FIRST_WISHES[units];
}

/** The measure asked for; null while no mattress is chosen, and for one bundle, which has none. */
export function targetOf(wish: Wish, mattresses: readonly Mattress[]): Target | null {
  if (wish.for === 'bundle') return null;
  if (wish.for === 'measure') return plainTarget(wish.width, wish.height);
  const mattress = mattresses.find(({ id }) => id === wish.bed) ?? mattresses[0];
  if (mattress === undefined) return null;
  const { width, length } = mattress;
  return bedTarget({ width, length, drop: wish.drop, tuck: wish.tuck });
}

/** What a size found for it is called until the designer says otherwise. */
export function nameOf(wish: Wish, mattresses: readonly Mattress[], ruler: Ruler): string {
  if (wish.for === 'bundle') return 'One bundle';
  if (wish.for === 'measure') return ruler.size(wish.width, wish.height);
  return (mattresses.find(({ id }) => id === wish.bed) ?? mattresses[0])?.name ?? 'Bed';
}
