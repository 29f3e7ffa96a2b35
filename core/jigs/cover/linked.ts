/** Groups of items that links join, directly or by way of others; groups and members keep the items' order. */
export function linked<T>(
  items: readonly T[],
  areLinked: (a: T, b: T) => boolean,
): readonly (readonly T[])[] {
  const groups: T[][] = [];
  const open = new Set(items);
  for (const first of items) {
    if (!open.delete(first)) continue;
    // A set hands out members that are added while it is gone through.
    const group = new Set([first]);
    for (const member of group) {
      for (const other of open) {
        if (!areLinked(member, other)) continue;
        open.delete(other);
        group.add(other);
      }
    }
    groups.push(items.filter((item) => group.has(item)));
  }
  return groups;
}
