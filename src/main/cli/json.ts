import type { Units } from '../../shared/measure/metric.ts';
import { explain, type Traced, tracedText } from '../../shared/measure/traced.ts';

/** A traced number for other programs: the number, its unit, as it is printed, and the sum that made it. */
interface ToldNumber {
  readonly value: number;
  readonly unit: Traced['unit'];
  readonly text: string;
  readonly sum: string;
}

/** Data as JSON text; every traced number in it told with its sum. @param units what texts are said in; values are inches */
export function jsonText(data: unknown, units: Units = 'inches'): string {
  return JSON.stringify(data, (_key, value: unknown) => (isTraced(value) ? told(value, units) : value), 2);
}

function isTraced(value: unknown): value is Traced {
  return typeof value === 'object' && value !== null && 'how' in value && 'unit' in value && 'value' in value;
}

function told(traced: Traced, units: Units): ToldNumber {
  return { value: traced.value, unit: traced.unit, text: tracedText(traced, units), sum: explain(traced, units) };
}
