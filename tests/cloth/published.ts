import { readdirSync, readFileSync } from 'node:fs';
import type { Kind } from '../../src/shared/cloth/strips/kinds.ts';

const folder = new URL('../published/cutting/', import.meta.url);

interface Level {
  readonly name: string;
  readonly width: number;
  readonly items: readonly { readonly w: number; readonly h: number; readonly demand: number }[];
  readonly minimumHeight: { readonly fixed?: number; readonly turned?: number };
}

interface One {
  readonly name: string;
  readonly length: number;
  readonly items: readonly { readonly l: number; readonly demand: number }[];
  readonly minimumCount: number;
}

/** A published problem: what is to be cut and the least length, as `tests/published/cutting/README.md` tells. */
export interface Published {
  readonly name: string;
  /** The collection it is from: the name of its file. */
  readonly family: string;
  readonly width: number;
  readonly kinds: readonly Kind[];
  readonly least: number;
}

function read<T>(start: string): readonly (readonly [family: string, problem: T])[] {
  const files = readdirSync(folder).filter((name) => name.startsWith(start));
  return files.flatMap((file) => {
    const family = file.replace(/\.json$/, '');
    const problems: T[] = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
    return problems.map((problem) => [family, problem] as const);
  });
}

/** Cut from strips, lying as given or with quarter turns allowed; those whose least length is known. */
export function levels(way: 'fixed' | 'turned'): readonly Published[] {
  return read<Level>('level-').flatMap(([family, { name, width, items, minimumHeight }]) => {
    const least = minimumHeight[way];
    const kinds = items.map(({ w, h, demand }) => ({ width: w, height: h, count: demand, turns: way === 'turned' }));
    return least === undefined ? [] : [{ name, family, width, kinds, least }];
  });
}

/** Stock of one length is cloth whose strips are all one tall. */
export function stocks(): readonly Published[] {
  return read<One>('one-').map(([family, { name, length, items, minimumCount }]) => ({
    name,
    family,
    width: length,
    kinds: items.map(({ l, demand }) => ({ width: l, height: 1, count: demand, turns: false })),
    least: minimumCount,
  }));
}
