import { useEffect, useState } from 'react';

/**
 * Something long in the making, worked out once the screen has shown what the hand just did; null until then.
 * @param of what it follows from: when that is another thing, what was worked out before is not shown for it
 * @param work must not change what it is given
 */
export function useAfterwards<Of, T>(of: Of, work: (of: Of) => T): T | null {
  const [done, setDone] = useState<{ readonly of: Of; readonly made: T } | null>(null);
  useEffect(() => {
    const later = setTimeout(() => setDone({ of, made: work(of) }), 30);
    return () => clearTimeout(later);
  }, [of, work]);
  return done !== null && done.of === of ? done.made : null;
}
