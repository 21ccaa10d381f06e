/** The list with one entry changed; the very same list when nothing in it changes. */
export function changed<T>(list: readonly T[], is: (entry: T) => boolean, change: (entry: T) => T): T[] {
  let same = true;
  const next = list.map((entry) => {
    if (!is(entry)) return entry;
    const now = change(entry);
    if (now !== entry) same = false;
    return now;
  });
  return same ? (list as T[]) : next;
}

/** The entry with some of its fields set; the very same entry when they have those values already. */
export function withFields<T extends object>(entry: T, fields: Partial<T>): T {
  const given = Object.entries(fields).filter(([, value]) => value !== undefined);
  const differs = given.some(([key, value]) => entry[key as keyof T] !== value);
  return differs ? { ...entry, ...Object.fromEntries(given) } : entry;
}

/** The entry without one of its optional fields; the very same entry when it has none. */
export function without<T extends object>(entry: T, field: keyof T): T {
  if (entry[field] === undefined) return entry;
  const { [field]: _was, ...rest } = entry;
  return rest as T;
}

/** The record with one name set, or taken out for null. */
export function withName<T>(record: Readonly<Record<string, T>>, name: string, value: T | null): Record<string, T> {
  if (record[name] === (value ?? undefined)) return record as Record<string, T>;
  const { [name]: _was, ...rest } = record;
  return value === null ? rest : { ...record, [name]: value };
}

/** The amounts added to what is trimmed with one of them set or, for null, taken out; as the schema takes them. */
export function withOversize(
  record: Readonly<Record<string, number>> | undefined,
  name: string,
  inches: number | null,
): Record<string, number> | undefined {
  const amount = inches === null ? null : lengthWithin(inches, 0, 2);
  if (record === undefined && amount === null) return undefined;
  return withName(record ?? {}, name, amount);
}

/** The list with one entry moved to another place. */
export function movedTo<T>(list: readonly T[], from: number, to: number): T[] {
  const place = Math.max(0, Math.min(list.length - 1, to));
  if (from < 0 || from === place) return list as T[];
  const rest = list.filter((_, index) => index !== from);
  return [...rest.slice(0, place), list[from] as T, ...rest.slice(place)];
}

/** A whole number within bounds; what is no number becomes the least. */
export function whole(value: number, least: number, most: number): number {
  return Number.isFinite(value) ? Math.max(least, Math.min(most, Math.round(value))) : least;
}

/** A length within bounds, inches; null when it is no length at all. */
export function lengthWithin(value: number, least: number, most: number): number | null {
  return Number.isFinite(value) ? Math.max(least, Math.min(most, value)) : null;
}

/** An id made of a name, such as `outer-border`, that none of `taken` has. */
export function freeId(name: string, taken: readonly string[]): string {
  const letters = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '');
  const base = letters === '' ? 'unnamed' : letters;
  if (!taken.includes(base)) return base;
  for (let n = 2; ; n += 1) if (!taken.includes(`${base}-${n}`)) return `${base}-${n}`;
}

/** A name for people: trimmed, and never empty or longer than a schema takes. */
export function named(text: string, instead: string): string {
  const trimmed = text.trim().slice(0, 200).trim();
  return trimmed === '' ? instead : trimmed;
}
