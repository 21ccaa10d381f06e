/**
 * What is alike before and now becomes the very same thing, part by part. A copy that crossed to a thread then still is what
 * the core knows it by: a drawing whose sewing was found once is not searched again because a border was widened.
 */
export function keepSame<T>(before: unknown, now: T): T {
  if (Object.is(before, now) || !isPlain(before) || !isPlain(now)) return now;
  if (Array.isArray(before) !== Array.isArray(now)) return now;
  const own: Record<string, unknown> = now;
  const keys = Object.keys(own);
  let alike = keys.length === Object.keys(before).length;
  for (const key of keys) {
    const kept = keepSame(before[key], own[key]);
    own[key] = kept;
    alike &&= Object.is(kept, before[key]) && key in before;
  }
  return alike ? (before as T) : now;
}

function isPlain(thing: unknown): thing is Record<string, unknown> {
  if (typeof thing !== 'object' || thing === null) return false;
  const kind: unknown = Object.getPrototypeOf(thing);
  return kind === Object.prototype || kind === Array.prototype;
}
