import type { Registration } from '../jigs/plan-types.ts';
import type { JigSharing } from '../jigs/sharing/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Order } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';

/** What a project file holds: an order, the shop standard that it was made with, and how its jigs are made. */
export interface Project {
  readonly order: Order;
  readonly standard: ShopStandard;
  /** Absent when the file holds none. */
  readonly machine?: MachineProfile;
  readonly registration?: Registration;
  readonly sharing?: JigSharing;
}
