import type { StockScrew } from '../rules/fastening-types.ts';
import { pilotBit, pilotTarget } from './bits.ts';
import { cornerFrame } from './corner-frame.ts';
import type { DrawerContext } from './drawer-context.ts';
import { limitsOf } from './limits/limits-of.ts';
import type { PlaceSpec } from './place-spec.ts';
import type { Ways } from './smallest-angle.ts';
import type { PlaceProblem } from './solve-place.ts';
import { memberOf, woodAt } from './woods.ts';
import type { EdgedWood } from './woods.ts';

/**
 * The problem of one screw: its limits in every wood that it may be in. Stiles and rails of one side or end are
 * called alike, so that the same corner of either hand is the same problem.
 */
export function placeProblem(context: DrawerContext, screw: StockScrew, spec: PlaceSpec): PlaceProblem {
  const { standard, woods, walls } = context;
  const bit = bitFor(context, screw);
  const frame = cornerFrame(walls, spec.corner);
  const place = { ...context, screw, spec, frame, bit };
  return {
    woods: woods
      .filter((wood) => mayHold(wood, spec))
      .map((wood) => ({ member: memberOf(wood.name), limits: limitsOf(place, wood) })),
    prefer: spec.prefer,
    aim: spec.aim,
    ways: waysOf(spec),
    angleStep: standard.fastening.angleStep.value,
  };
}

/** The drill of the pilot, which the guide guides; mm. */
export const bitFor = ({ species, standard }: DrawerContext, screw: StockScrew): number =>
  pilotBit(pilotTarget(screw, species), standard.fastening.bits);

/** A corner's screw may lean both ways; one of a row towards the rail, one up the side towards the side. */
export const waysOf = ({ index, along }: PlaceSpec): Ways =>
  index === 0 ? ['side', 'rail'] : [along === 'end' ? 'rail' : 'side'];

/** A corner's screw may be in its own stile or rail; one up the side in the stile. */
const mayHold = ({ name }: EdgedWood, { corner, along }: PlaceSpec): boolean => {
  const member = memberOf(name);
  return name === woodAt(member, corner) && (along === 'end' || member !== 'rail');
};
