import type { DrawerFit } from '../../fit/types.ts';
import type { StockScrew } from '../../rules/fastening-types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { BoxWalls } from '../box-walls.ts';
import type { CornerFrame } from '../corner-frame.ts';
import type { PlaceSpec } from '../place-spec.ts';
import type { PullHoles } from '../pull-holes.ts';

/** What the limits of one screw are made of. */
export interface PlaceContext {
  readonly fit: DrawerFit;
  readonly standard: ShopStandard;
  readonly walls: BoxWalls;
  readonly pullHoles: PullHoles;
  readonly screw: StockScrew;
  readonly frame: CornerFrame;
  readonly spec: PlaceSpec;
  /** mm; of the plate that guides the drill. */
  readonly guideThickness: number;
  /** mm; of the drill that the guide guides. */
  readonly bit: number;
}
