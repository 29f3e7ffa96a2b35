/** A list as what it has of another one: the place there of each item that is the same, or the new item. */
export type ListPatch<T> = readonly (number | { readonly item: T })[];

/** A record as what it has of another one. */
export interface RecordPatch<T> {
  readonly set: Readonly<Record<string, T>>;
  readonly removed: readonly string[];
}

/** What turns one list into another; undefined when they are the very same. */
export function listPatch<T>(before: readonly T[], after: readonly T[]): ListPatch<T> | undefined {
  if (before === after) return undefined;
  const places = new Map(before.map((item, index) => [item, index]));
  return after.map((item) => places.get(item) ?? { item });
}

/** The other list; items that are in both keep their identity. */
export function patchedList<T>(before: readonly T[], patch: ListPatch<T> | undefined): readonly T[] {
  if (patch === undefined) return before;
  return patch.map((entry) => {
    if (typeof entry !== 'number') return entry.item;
    const item = before[entry];
    if (item === undefined) throw new RangeError(`patchedList: there is no item ${entry}`);
    return item;
  });
}

type RecordOf<T> = Readonly<Record<string, T>>;

/** What turns one record into another; undefined when they are the very same. */
export function recordPatch<T>(before: RecordOf<T>, after: RecordOf<T>): RecordPatch<T> | undefined {
  if (before === after) return undefined;
  return {
    set: Object.fromEntries(Object.entries(after).filter(([key, value]) => before[key] !== value)),
    removed: Object.keys(before).filter((key) => !Object.hasOwn(after, key)),
  };
}

/** The other record; values that are in both keep their identity. */
export function patchedRecord<T>(before: RecordOf<T>, patch: RecordPatch<T> | undefined): RecordOf<T> {
  if (patch === undefined) return before;
  if (patch.removed.length === 0) return { ...before, ...patch.set };
  const removed = new Set(patch.removed);
  const kept = Object.entries(before).filter(([key]) => !removed.has(key));
  return { ...Object.fromEntries(kept), ...patch.set };
}
