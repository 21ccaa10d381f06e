import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Contract, PatternCard, RecipeCard } from '../../shared/contract.ts';
import { useHost, useStudio, useStudioState } from '../state/hooks.tsx';
import { refusalOf } from '../state/host.ts';
import { NO_WISHES, searchFor, type Wishes } from './wishes.ts';

/** How many recipe cards are asked for at a time. */
const AT_A_TIME = 60;

export interface Shelf {
  /** What these were found for: a moment behind what is being typed. */
  readonly wishes: Wishes;
  readonly patterns: readonly PatternCard[];
  readonly recipes: readonly RecipeCard[];
  /** How many recipes there are for the wishes; those that are here are the first of them. */
  readonly count: number;
  /** True until the first answer is here. */
  readonly waiting: boolean;
  /** Asks for the next recipes; does nothing when all are here. */
  readonly more: () => void;
  /** Asks for everything again, after something was added or removed. */
  readonly again: () => void;
}

type Found = Pick<Shelf, 'wishes' | 'patterns' | 'recipes' | 'count'>;

const NOTHING: Found = { wishes: NO_WISHES, patterns: [], recipes: [], count: 0 };

async function find(host: Contract, wishes: Wishes): Promise<Found> {
  const search = searchFor(wishes);
  const first = { ...search, from: 0, atMost: AT_A_TIME };
  const asked = [host.patterns(), host.recipes(first), host.countRecipes(search)] as const;
  const [patterns, recipes, count] = await Promise.all(asked);
  const matching = patterns.filter((card) => matches(card, wishes.words));
  return { wishes, patterns: matching, recipes, count };
}

function matches({ title, designer }: PatternCard, words: string): boolean {
  const text = `${title} ${designer}`.toLocaleLowerCase();
  return words
    .toLocaleLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** The patterns and recipes that match the wishes, as they are typed; what was found before stands until then. */
export function useShelf(wishes: Wishes): Shelf {
  const host = useHost();
  const studio = useStudio();
  const [found, setFound] = useState<Found | null>(null);
  const [asked, setAsked] = useState(0);
  const saved = useStudioState(({ history, kept }) => (kept.state === 'kept' ? history?.now : null));

  // biome-ignore lint/correctness/useExhaustiveDependencies: a pattern that was just kept, or `again`, asks anew
  useEffect(() => {
    let wanted = true;
    find(host, wishes)
      .then((next) => wanted && setFound(next))
      .catch((thrown) => wanted && studio.say(refusalOf(thrown).words, { tone: 'stops' }));
    return () => {
      wanted = false;
    };
  }, [host, studio, wishes, asked, saved]);

  const asking = useRef(wishes);
  asking.current = wishes;
  const more = useCallback(() => {
    if (found === null || found.recipes.length >= found.count || found.wishes !== asking.current) return;
    const next = { ...searchFor(found.wishes), from: found.recipes.length, atMost: AT_A_TIME };
    void host.recipes(next).then((recipes) => {
      // An answer without recipes means that some were removed meanwhile: nothing more is asked for.
      const known = recipes.length === 0 ? found.recipes.length : found.count;
      const longer = { ...found, recipes: [...found.recipes, ...recipes], count: known };
      setFound((before) => (before === found ? longer : before));
    });
  }, [host, found]);

  const again = useCallback(() => setAsked((before) => before + 1), []);
  return useMemo(() => ({ ...(found ?? NOTHING), waiting: found === null, more, again }), [found, more, again]);
}
