import type { Registration } from '../jigs/plan-types.ts';
import type { JigSharing } from '../jigs/sharing/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { OrderColumn } from '../order/columns.ts';
import type { LengthUnit } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import type { Unread, UnreadFields } from './unread.ts';

/** One line of an order while it is being worked on: the text of its cells, right or not. */
export interface DraftRow {
  /** Stays with the row however rows are moved; unique in a draft. */
  readonly id: string;
  /** Trimmed text; an empty cell is absent. */
  readonly cells: Readonly<Partial<Record<OrderColumn, string>>>;
  /** Fields of the drawer in its project file that the program does not read; absent when there are none. */
  readonly unread?: UnreadFields;
}

/** An order in work with all that its jigs depend on: what a project file holds. */
export interface Draft {
  readonly name: string;
  /** `YYYY-MM-DD`; absent when none is engraved. */
  readonly date?: string;
  /** Unit of bare numbers in the cells. */
  readonly unit: LengthUnit;
  readonly rows: readonly DraftRow[];
  readonly standard: ShopStandard;
  readonly machine: MachineProfile;
  readonly registration: Registration;
  /** Whether drawers of different overhangs share jigs. */
  readonly sharing: JigSharing;
  /** Fields of its project file that the program does not read; absent when there are none. */
  readonly unread?: Unread;
}
