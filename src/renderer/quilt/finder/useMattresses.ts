import { useCallback, useEffect, useState } from 'react';
import type { Mattresses } from '../../../shared/contract.ts';
import { freeId } from '../../../shared/pattern/edits/list.ts';
import type { Mattress } from '../../../shared/pattern/mattresses.ts';
import { useHost, useStudio } from '../../state/hooks.tsx';

const NONE: Mattresses = { tables: [], own: [] };

export interface MattressChest extends Mattresses {
  /** Every mattress, the designer's own first. */
  readonly all: readonly Mattress[];
  readonly add: (name: string, width: number, length: number) => Promise<string | null>;
  readonly remove: (id: string) => Promise<void>;
}

/** The mattresses there are to find sizes for: those that come with the studio, and the designer's own. */
export function useMattresses(): MattressChest {
  const host = useHost();
  const studio = useStudio();
  const [chest, setChest] = useState<Mattresses>(NONE);
  const look = useCallback(async () => {
    try {
      setChest(await host.mattresses());
    } catch (thrown) {
      studio.sayWhy(thrown);
    }
  }, [host, studio]);
  useEffect(() => void look(), [look]);
  const all = [...chest.own, ...chest.tables.flatMap(({ mattresses }) => mattresses)];
  const change = async (act: () => Promise<void>): Promise<boolean> => {
    try {
      await act();
      await look();
      return true;
    } catch (thrown) {
      studio.sayWhy(thrown);
      return false;
    }
  };
  return {
    ...chest,
    all,
    add: async (name, width, length) => {
      const taken = all.map((mattress) => mattress.id);
      const id = freeId(name, taken);
      return (await change(() => host.saveMattress({ id, name: name.trim(), width, length }))) ? id : null;
    },
    remove: async (id) => void (await change(() => host.removeMattress(id))),
  };
}
