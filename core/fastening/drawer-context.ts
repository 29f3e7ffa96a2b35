import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import type { Species } from '../rules/wood-types.ts';
import { boxWalls } from './box-walls.ts';
import type { BoxWalls } from './box-walls.ts';
import { GUIDE_THICKNESS } from './guide-thickness.ts';
import { pullHoles } from './pull-holes.ts';
import type { PullHoles } from './pull-holes.ts';
import { woodsOf } from './woods.ts';
import type { EdgedWood } from './woods.ts';

/** What all screws of one drawer have in common. Lengths in mm. */
export interface DrawerContext {
  readonly fit: DrawerFit;
  readonly standard: ShopStandard;
  readonly walls: BoxWalls;
  readonly woods: readonly EdgedWood[];
  readonly pullHoles: PullHoles;
  readonly guideThickness: number;
  readonly species: Species;
}

export const drawerContext = (
  fit: DrawerFit,
  standard: ShopStandard,
  guideThickness = GUIDE_THICKNESS,
): DrawerContext => ({
  fit,
  standard,
  walls: boxWalls(fit, standard),
  woods: woodsOf(fit),
  pullHoles: pullHoles(fit, standard),
  guideThickness,
  species: speciesOf(fit, standard),
});

/** The name of the wood that a front is said to be of: the row's, else the standard's. */
export const speciesName = ({ drawer }: DrawerFit, { front }: ShopStandard): string =>
  drawer.species ?? front.wood.species.value;

/** The wood of a front; the lightest that the standard knows where it does not know the one that is named. */
function speciesOf(fit: DrawerFit, standard: ShopStandard): Species {
  const known = standard.species[speciesName(fit, standard)];
  if (known !== undefined) return known;
  const [first, ...rest] = Object.values(standard.species);
  if (first === undefined) throw new RangeError('fastening: the standard has no species');
  return rest.reduce((a, b) => (b.specificGravity.value < a.specificGravity.value ? b : a), first);
}
