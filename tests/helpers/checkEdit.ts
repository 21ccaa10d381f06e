import { expect } from 'vitest';
import type { Edit } from '../../src/shared/pattern/edit.ts';
import { readPatternText } from '../../src/shared/pattern/load.ts';
import { ALONE } from '../../src/shared/pattern/recipes.ts';
import { documentText } from '../../src/shared/pattern/save.ts';
import type { Pattern } from '../../src/shared/pattern/schema.ts';

/**
 * What must be true of every edit: it leaves the document it was given as it was (so undo is that document), has a name
 * of its own, gives a document that its schema accepts and that comes back the same from a file, and doing it to the very
 * same document again gives the same answer.
 * @returns the document after the edit
 */
export function checkEdit<Args>(edit: Edit<Args>, args: Args, pattern: Pattern): Pattern {
  const before = documentText(pattern);
  const after = edit.apply(pattern, args);
  expect(documentText(pattern)).toBe(before);
  expect(edit.name(args, pattern).trim()).not.toBe('');
  const read = readPatternText(documentText(after), ALONE);
  if (!read.ok) throw new Error(`${edit.id}: ${read.findings.map((finding) => finding.what).join(' ')}`);
  expect(read.value).toEqual(after);
  expect(edit.apply(pattern, args)).toEqual(after);
  return after;
}
