import { describe, expect, test } from 'vitest';
import { gridSpans } from '../../src/shared/piecing/gridSpans.ts';
import { starter } from '../helpers/starters.ts';

const nine = starter('nine-patch');

describe('the columns and rows of a grid recipe', () => {
  test('a nine-patch has three equal ones each way', () => {
    const spans = gridSpans(nine, {});
    expect(spans?.columns).toHaveLength(3);
    expect(new Set(spans?.rows).size).toBe(1);
  });

  test('a width that names a parameter takes its value, or its default', () => {
    const recipe = {
      ...nine,
      parameters: [{ id: 'rail', name: 'Rail', default: 2, least: 1, most: 9 }],
      body: { kind: 'grid', columns: [1, 'rail'], rows: ['rail'], key: {}, layout: [] } as const,
    };
    const loose = recipe as unknown as typeof nine;
    expect(gridSpans(loose, {})).toEqual({ columns: [1, 2], rows: [2] });
    expect(gridSpans(loose, { rail: 5 })).toEqual({ columns: [1, 5], rows: [5] });
  });

  test('a width that names nothing, or a recipe of rounds, has none', () => {
    const lost = { ...nine, body: { ...nine.body, columns: ['nowhere'] } } as typeof nine;
    expect(gridSpans(lost, {})).toBeNull();
    expect(gridSpans(starter('log-cabin'), {})).toBeNull();
  });
});
