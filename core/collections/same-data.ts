/**
 * Whether two pieces of plain data say the same: numbers, texts, lists and records, to any depth.
 * Functions are the same only if they are identical.
 */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    return Array.isArray(a) && Array.isArray(b) && sameLists(a, b);
  }
  const keys = Object.keys(a);
  if (keys.length !== Object.keys(b).length) return false;
  for (const key of keys) {
    if (!Object.hasOwn(b, key) || !sameData(Reflect.get(a, key), Reflect.get(b, key))) return false;
  }
  return true;
}

function sameLists(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let index = 0; index < a.length; index += 1) if (!sameData(a[index], b[index])) return false;
  return true;
}

/** The earlier data if the later says the same, so that what did not change keeps its identity. */
export const keepSame = <T>(before: T, after: T): T => (sameData(before, after) ? before : after);
