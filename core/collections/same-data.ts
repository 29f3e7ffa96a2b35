/**
 * Whether two pieces of plain data say the same: numbers, texts, lists and records, to any depth.
 * Functions are the same only if they are identical.
 */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    return (
      Array.isArray(a) &&
      Array.isArray(b) &&
      a.length === b.length &&
      a.every((item, index) => sameData(item, b[index]))
    );
  }
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && sameData(Reflect.get(a, key), Reflect.get(b, key)))
  );
}

/** The earlier data if the later says the same, so that what did not change keeps its identity. */
export const keepSame = <T>(before: T, after: T): T => (sameData(before, after) ? before : after);
