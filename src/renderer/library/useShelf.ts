import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Contract, PatternCard, RecipeCard } from '../../shared/contract.ts';
import { useHost, useStudio, useStudioState } from '../state/hooks.tsx';

/** How many recipe cards are asked for at a time. */
const AT_A_TIME = 60;

export interface Shelf {
  /** The words these were found for: a moment behind those being typed. */
  readonly words: string;
  readonly patterns: readonly PatternCard[];
  readonly recipes: readonly RecipeCard[];
  /** True until the first answer is here. */
  readonly waiting: boolean;
  /** Asks for the next recipes; does nothing when all are here. */
  readonly more: () => void;
  /** Asks for everything again, after something was added or removed. */
  readonly again: () => void;
}

interface Found {
  readonly words: string;
  readonly patterns: readonly PatternCard[];
  readonly recipes: readonly RecipeCard[];
  readonly all: boolean;
}

const NOTHING = { patterns: [], recipes: [] } as const;

async function find(host: Contract, words: string): Promise<Found> {
  const [patterns, recipes] = await Promise.all([host.patterns(), host.recipes({ words, from: 0, atMost: AT_A_TIME })]);
  return { words, patterns: patterns.filter((card) => matches(card, words)), recipes, all: recipes.length < AT_A_TIME };
}

function matches({ title, designer }: PatternCard, words: string): boolean {
  const text = `${title} ${designer}`.toLocaleLowerCase();
  return words
    .toLocaleLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** The patterns and recipes that match the words, as they are typed; what was found before stands until then. */
export function useShelf(words: string): Shelf {
  const host = useHost();
  const studio = useStudio();
  const [found, setFound] = useState<Found | null>(null);
  const [asked, setAsked] = useState(0);
  const saved = useStudioState(({ history, kept }) => (kept.state === 'kept' ? history?.now : null));

  // biome-ignore lint/correctness/useExhaustiveDependencies: a pattern that was just kept, or `again`, asks anew
  useEffect(() => {
    let wanted = true;
    find(host, words)
      .then((next) => wanted && setFound(next))
      .catch((thrown) => wanted && studio.sayWhy(thrown));
    return () => {
      wanted = false;
    };
  }, [host, studio, words, asked, saved]);

  const typed = useRef(words);
  typed.current = words;
  const more = useCallback(() => {
    if (found === null || found.all || found.words !== typed.current) return;
    void host.recipes({ words: found.words, from: found.recipes.length, atMost: AT_A_TIME }).then((next) => {
      const longer = { ...found, recipes: [...found.recipes, ...next], all: next.length < AT_A_TIME };
      setFound((before) => (before === found ? longer : before));
    });
  }, [host, found]);

  const again = useCallback(() => setAsked((before) => before + 1), []);
  return useMemo(() => {
    const { patterns, recipes } = found ?? NOTHING;
    return { words: found?.words ?? '', patterns, recipes, waiting: found === null, more, again };
  }, [found, more, again]);
}
