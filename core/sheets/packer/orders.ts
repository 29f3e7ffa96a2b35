import type { Random } from './random.ts';
import type { Item } from './types.ts';

/** How much an item wants to come early. */
export type Rank = (item: Item) => number;

const longer = ({ width, height }: Item): number => Math.max(width, height);
const shorter = ({ width, height }: Item): number => Math.min(width, height);

/** Large things first, by different measures of large. */
export const RANKS: readonly Rank[] = [
  (item) => item.width * item.height,
  (item) => longer(item) + shorter(item) / 1e3,
  (item) => shorter(item) + longer(item) / 1e3,
  (item) => item.width + item.height,
  (item) => item.width * item.height * longer(item),
  (item) => longer(item) - shorter(item) / 2,
];

/** Items in falling order of a rank; equal ones keep their order. */
export const inOrder = (items: readonly Item[], rank: Rank): Item[] => sortBy(items, items.map(rank));

/** The same, each rank made up to `noise` larger or smaller at random. */
export const inNoisyOrder = (items: readonly Item[], rank: Rank, noise: number, random: Random): Item[] =>
  sortBy(
    items,
    items.map((item) => rank(item) * (1 + noise * (2 * random() - 1))),
  );

function sortBy(items: readonly Item[], keys: readonly number[]): Item[] {
  return items
    .map((item, at) => ({ item, key: keys[at] ?? 0 }))
    .sort((a, b) => b.key - a.key)
    .map(({ item }) => item);
}
