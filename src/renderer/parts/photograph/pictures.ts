import { useEffect, useState } from 'react';
import type { Contract } from '../../../shared/contract.ts';
import { useHost } from '../../state/hooks.tsx';

/** Pictures that the host gave, by name: a picture never changes, so it is asked for once. Null for one that is not kept here. */
const asked = new Map<string, Promise<string | null>>();
const known = new Map<string, string>();

function ask(host: Contract, id: string): Promise<string | null> {
  const before = asked.get(id);
  if (before !== undefined) return before;
  const picture = host.photograph(id).then(
    ({ type, data }) => {
      const url = `data:${type};base64,${data}`;
      known.set(id, url);
      return url;
    },
    () => {
      // It may be brought in again, or the host may have been away.
      asked.delete(id);
      return null;
    },
  );
  asked.set(id, picture);
  return picture;
}

const NONE: ReadonlyMap<string, string> = new Map();

/** The pictures of these names as addresses that can be drawn, as far as they have come. */
export function usePictures(ids: readonly string[]): ReadonlyMap<string, string> {
  const host = useHost();
  const key = [...new Set(ids)].sort().join(' ');
  const [pictures, setPictures] = useState<ReadonlyMap<string, string>>(() => knownOf(key));
  useEffect(() => {
    let gone = false;
    const wanted = key === '' ? [] : key.split(' ');
    setPictures(knownOf(key));
    void Promise.all(wanted.map((id) => ask(host, id))).then(() => {
      if (!gone) setPictures(knownOf(key));
    });
    return () => {
      gone = true;
    };
  }, [host, key]);
  return pictures;
}

function knownOf(key: string): ReadonlyMap<string, string> {
  const own = key.split(' ').flatMap((id) => {
    const url = known.get(id);
    return url === undefined ? [] : [[id, url] as const];
  });
  return own.length === 0 ? NONE : new Map(own);
}
