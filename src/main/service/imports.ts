/** The longest id a document may have. */
const LONGEST = 80;

/** The id itself when nobody has it, else the first of "id-2", "id-3"… that is free. */
export function freshId(id: string, taken: (id: string) => boolean): string {
  if (!taken(id)) return id;
  for (let number = 2; ; number += 1) {
    const ending = `-${number}`;
    const candidate = id.slice(0, LONGEST - ending.length) + ending;
    if (!taken(candidate)) return candidate;
  }
}
