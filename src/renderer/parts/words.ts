/** A sentence as it reads in the middle of another. */
export function lowerFirst(words: string): string {
  return words.slice(0, 1).toLowerCase() + words.slice(1);
}
