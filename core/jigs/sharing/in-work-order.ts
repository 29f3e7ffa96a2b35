import { groupBy } from '../../collections/group-by.ts';
import { scheduleOrder } from '../cover/schedule-order.ts';
import type { JigUse } from '../plan-types.ts';

/** The uses of a plan in the order of work in which jigs change hands least, drawer by drawer. */
export function inWorkOrder(uses: readonly JigUse[]): readonly JigUse[] {
  const drawers = [...groupBy(uses, ({ fit }) => fit).values()];
  const stations = drawers.map((own, place) => ({ id: `${place}`, jigs: own.map(({ jig }) => jig.id) }));
  return scheduleOrder(stations).order.flatMap((id) => drawers[Number(id)] ?? []);
}
