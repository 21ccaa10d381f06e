/**
 * What the designer typed as a full text query: every word must begin some word of the recipe. Each word is quoted, so
 * that nothing in it is taken for the query language; a word such as "four-patch" is split by the index's own
 * tokenizer. Empty when there is nothing to look for.
 */
export function searchQuery(words: string): string {
  return words
    .replaceAll('\0', ' ')
    .split(/\s+/)
    .filter((word) => /[\p{L}\p{N}]/u.test(word))
    .map((word) => `"${word.replaceAll('"', '""')}"*`)
    .join(' ');
}
