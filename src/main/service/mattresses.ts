import type { Mattresses as Offered } from '../../shared/contract.ts';
import type { Mattress, MattressTable } from '../../shared/pattern/mattresses.ts';
import type { Store } from '../store/store.ts';
import { gone } from './documents.ts';

/** The calls of the contract about mattresses, for inputs that have been checked. */
export interface MattressShelf {
  all(): Offered;
  save(mattress: Mattress): void;
  remove(id: string): void;
}

export function makeMattresses({ mattresses }: Store, tables: readonly MattressTable[]): MattressShelf {
  return {
    all: () => ({ tables, own: mattresses.all() }),
    save: (mattress) => mattresses.save(mattress),
    remove(id) {
      if (!mattresses.remove(id)) throw gone('mattress', id);
    },
  };
}
