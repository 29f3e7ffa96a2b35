import type { Order } from './types.ts';

/** What is engraved on every jig of an order: its name, and its date if it has one. */
export const engravedWords = ({
  name,
  date,
}: {
  readonly name: Order['name'];
  readonly date?: Order['date'] | undefined;
}): readonly string[] => (date === undefined ? [name] : [name, date]);
