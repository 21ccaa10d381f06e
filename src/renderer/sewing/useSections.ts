import { useMemo } from 'react';
import type { Pattern } from '../../shared/pattern/schema.ts';
import type { SectionId } from '../../shared/writing/book.ts';
import { bookReader, type ReadSections } from '../state/away/foldedBook.ts';
import { type Asked, useAway } from '../state/away/useAway.ts';

/** What was read last, so that it is there at once when the designer comes back to it. */
let last: { readonly pattern: string; readonly read: ReadSections } | null = null;
const reader = bookReader();

/** Sections of the written pattern; those of a moment before stand until newer ones are written. */
export function useSections(pattern: Pattern, wanted: readonly SectionId[]): Asked<ReadSections> {
  const asked = useAway('writeSections', [pattern, wanted]);
  const { id } = pattern;
  const read = useMemo(() => {
    if (asked.answer !== null) last = { pattern: id, read: reader(asked.answer) };
    return last?.pattern === id ? last.read : null;
  }, [asked.answer, id]);
  return { ...asked, answer: read };
}
