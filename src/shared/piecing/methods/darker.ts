import type { Value } from '../../recipe/schema.ts';
import type { Scale } from '../method.ts';

const DEPTH: Readonly<Record<Value, number>> = { light: 0, medium: 1, dark: 2 };

/** Which of two roles is the darker one; null when their values are not known or are the same. */
export function darker([first, second]: readonly [string, string], scale: Scale): 'first' | 'second' | null {
  const one = scale.roleValue?.(first);
  const other = scale.roleValue?.(second);
  if (one === undefined || other === undefined || one === other) return null;
  return DEPTH[one] > DEPTH[other] ? 'first' : 'second';
}
