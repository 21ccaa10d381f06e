import type { Words } from '../../shared/writing/book.ts';
import { Why } from '../parts/Why.tsx';

/** A sentence of the written pattern; its bound numbers can be asked why. */
export function BookWords({ words }: { readonly words: Words }) {
  return words.map((part, i) => {
    if (typeof part === 'string') return part;
    // biome-ignore lint/suspicious/noArrayIndexKey: a sentence is one fixed list that is replaced whole
    if ('strong' in part) return <strong key={i}>{part.strong}</strong>;
    // biome-ignore lint/suspicious/noArrayIndexKey: as above
    return <Why key={i} traced={part.field} />;
  });
}
