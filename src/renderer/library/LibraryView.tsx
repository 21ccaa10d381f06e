import { useEffect, useState } from 'react';
import type { PatternCard } from '../../shared/contract.ts';
import { Button } from '../parts/Button.tsx';
import { useHost, useStudio } from '../state/hooks.tsx';

/** The shelf: patterns and block recipes. */
export default function LibraryView() {
  const host = useHost();
  const studio = useStudio();
  const [patterns, setPatterns] = useState<readonly PatternCard[]>([]);
  useEffect(() => {
    void host.patterns().then(setPatterns);
  }, [host]);
  return (
    <ul>
      {patterns.map((card) => (
        <li key={card.id}>
          <Button onPress={() => void studio.open(card.id)}>{card.title}</Button>
        </li>
      ))}
    </ul>
  );
}
