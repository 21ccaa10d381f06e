import type { Units } from '../measure/metric.ts';
import type { Section, Show } from './book.ts';

const METRIC: Readonly<Partial<Record<Show, Show>>> = { length: 'centimetres', yards: 'metres' };

/** The sections with every number in what the house measures in; figures bring their own letters and stay as they are. */
export function inUnits(sections: readonly Section[], units: Units): readonly Section[] {
  return units === 'inches' ? sections : sections.map(withMetric);
}

function withMetric<T>(part: T): T {
  if (Array.isArray(part)) return part.map(withMetric) as T;
  if (typeof part !== 'object' || part === null) return part;
  if ('field' in part && 'show' in part) return { ...part, show: METRIC[part.show as Show] ?? part.show };
  const entries = Object.entries(part).map(([key, value]) => [key, key === 'figure' ? value : withMetric(value)]);
  return Object.fromEntries(entries) as T;
}
