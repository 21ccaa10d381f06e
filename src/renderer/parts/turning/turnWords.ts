import type { Turn } from '../../../shared/drawing/turn.ts';

const QUARTERS = ['', 'turned a quarter', 'turned a half', 'turned three quarters'] as const;

/** How something lies, in words: "mirrored, turned a quarter"; nothing when it lies as drawn. */
export function turnWords({ quarters, mirrored }: Turn): string {
  return [mirrored ? 'mirrored' : '', QUARTERS[quarters]].filter((word) => word !== '').join(', ');
}

/** The turn a key asks for: R a quarter clockwise, Shift R a quarter back, M a mirror; null for every other key. */
export function turnOfKey(key: string): Turn | null {
  if (key === 'r') return { quarters: 1, mirrored: false };
  if (key === 'R') return { quarters: 3, mirrored: false };
  return key.toLowerCase() === 'm' ? { quarters: 0, mirrored: true } : null;
}
