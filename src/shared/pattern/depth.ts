/** How deep the lists and entries of a file may lie in one another; no document of ours comes near it. */
export const DEEPEST = 40;

/**
 * Where lists and entries of a JSON text first lie deeper in one another than they may; null when they never do. Asked
 * before the text is read, because reading goes as deep as the text does.
 */
export function firstTooDeep(text: string): number | null {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const letter = text[at];
    if (quoted) {
      if (letter === '\\') at += 1;
      else if (letter === '"') quoted = false;
    } else if (letter === '"') quoted = true;
    else if (letter === '{' || letter === '[') {
      depth += 1;
      if (depth > DEEPEST) return at;
    } else if (letter === '}' || letter === ']') depth -= 1;
  }
  return null;
}
