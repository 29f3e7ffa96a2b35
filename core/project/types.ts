import type { Order } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';

/** What a project file holds: an order and the shop standard that it was made with. */
export interface Project {
  readonly order: Order;
  readonly standard: ShopStandard;
}
