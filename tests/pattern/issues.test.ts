import { expect, test } from 'vitest';
import { schemaFindings } from '../../src/shared/pattern/issues.ts';
import { bodySchema } from '../../src/shared/recipe/schema.ts';

test('what is wrong with a drawing is told of the drawing, however much of it is wrong', () => {
  const splits = Array.from({ length: 400 }, (_, i) => ({ from: [i, 0], to: [i, 400], role: 'sea', where: 'left' }));
  const checked = bodySchema.safeParse({ kind: 'drawing', width: 400, height: 400, role: 'sky', splits });
  const [first] = checked.success ? [] : schemaFindings(checked.error.issues);
  expect(first?.where.path).toMatch(/^splits\[\d+\]/);
});
