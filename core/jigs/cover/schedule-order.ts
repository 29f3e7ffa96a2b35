import { groupBy } from '../../collections/group-by.ts';
import { linked } from './linked.ts';
import { shortestRun } from './shortest-run.ts';

/** A drawer to be set, and the jigs (or settings of jigs) that it takes. */
export interface Station {
  readonly id: string;
  readonly jigs: readonly string[];
}

export interface Schedule {
  /** Ids of the drawers, in the order in which to set them. */
  readonly order: readonly string[];
  /** How often a jig is taken up that was not used on the drawer before; the first ones count too. */
  readonly changes: number;
  /** No order changes jigs less often. Equals `changes` when the order is proved to be best. */
  readonly bound: number;
}

/**
 * The order of work in which jigs change hands least. Drawers of the same jigs stay together, and so do those
 * that jigs link: leaving such a group and coming back saves nothing. Within a group exact up to 12 different
 * sets of jigs, beyond that a good order with a bound. Otherwise drawers keep the order in which they came.
 */
export function scheduleOrder(drawers: readonly Station[]): Schedule {
  const sets = [
    ...groupBy(drawers, ({ jigs }) => JSON.stringify([...new Set(jigs)].toSorted())).values(),
  ].map((members) => ({ members, jigs: new Set(members[0]?.jigs) }));
  const order: string[] = [];
  let changes = 0;
  let bound = 0;
  for (const group of linked(sets, (a, b) => shared(a.jigs, b.jigs) > 0)) {
    const run = shortestRun(group.length, (a, b) => {
      const [one, two] = [group[a], group[b]];
      return one === undefined || two === undefined ? 0 : shared(one.jigs, two.jigs);
    });
    const takings = group.reduce((sum, { jigs }) => sum + jigs.size, 0);
    const kinds = new Set(group.flatMap(({ jigs }) => [...jigs])).size;
    changes += takings - run.kept;
    // Each jig is taken up once at least.
    bound += Math.max(kinds, takings - run.mostKept);
    order.push(...run.order.flatMap((place) => (group[place]?.members ?? []).map(({ id }) => id)));
  }
  return { order, changes, bound };
}

const shared = (a: ReadonlySet<string>, b: ReadonlySet<string>): number =>
  [...a].filter((jig) => b.has(jig)).length;
