import { hasErrors } from '../../core/findings/make.ts';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { shareOrder, type Shared } from '../../core/jigs/sharing/share-order.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import { engravedWords } from '../../core/order/engraved-words.ts';
import type { Order } from '../../core/order/types.ts';
import type { Workshop } from '../../core/pipeline.ts';
import { loadSolver } from './load-solver.ts';

/** Which drawers of an order share jigs. An order with faults shares nothing: its design tells of them. */
export async function share(order: Order, workshop: Workshop, wish: JigSharing): Promise<Shared> {
  if (wish === 'each') return { value: null, findings: [] };
  const { standard, machine, registration } = workshop;
  const fits = fitOrder(order, standard);
  if (hasErrors(fits.findings)) return { value: null, findings: [] };
  const context = { machine, unit: order.unit, order: engravedWords(order) };
  return shareOrder({ fits: fits.value, standard, registration, context }, wish, loadSolver);
}
