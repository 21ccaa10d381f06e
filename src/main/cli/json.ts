import { explain, type Traced, tracedText } from '../../shared/measure/traced.ts';

/** A traced number for other programs: the number, its unit, as it is printed, and the sum that made it. */
interface ToldNumber {
  readonly value: number;
  readonly unit: Traced['unit'];
  readonly text: string;
  readonly sum: string;
}

/** Data as JSON text; every traced number in it told with its sum. */
export function jsonText(data: unknown): string {
  return JSON.stringify(data, (_key, value: unknown) => (isTraced(value) ? told(value) : value), 2);
}

function isTraced(value: unknown): value is Traced {
  return typeof value === 'object' && value !== null && 'how' in value && 'unit' in value && 'value' in value;
}

function told(traced: Traced): ToldNumber {
  return { value: traced.value, unit: traced.unit, text: tracedText(traced), sum: explain(traced) };
}
