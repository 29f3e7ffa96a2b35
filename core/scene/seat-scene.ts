import type { Fastening } from '../fastening/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import { drawerName } from '../fit/drawer-name.ts';
import { edgeFrame } from '../jigs/edge-frame.ts';
import type { Jig } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { ShopStandard } from '../rules/types.ts';
import type { LengthUnit } from '../units/unit.ts';
import { boxPlace } from './box-place.ts';
import { boxSolids } from './box-solids.ts';
import { cabinetLeft } from './cabinet-left.ts';
import { chooseSeat, type SeatUse } from './choose-seat.ts';
import { sceneContacts } from './contacts.ts';
import { sceneDimensions } from './dimensions.ts';
import { frontSolid } from './front-solid.ts';
import { jigSolids } from './jig-solids.ts';
import { keepOuts } from './keep-outs.ts';
import { placed, seatFrame } from './place-jig.ts';
import { screwSolids } from './screw-solids.ts';
import { sectionAcross } from './section.ts';
import { solidPoints } from './solid-points.ts';
import { useSteps } from './steps.ts';
import type { SeatScene } from './types.ts';
import { add, blockOf, centerOf, scale } from './vec.ts';
import { standardViews } from './views.ts';

export interface SeatRequest {
  readonly fit: DrawerFit;
  readonly jig: Jig;
  /** The edges at which this jig is used on this drawer, with the overhangs where it is shared. */
  readonly uses: readonly SeatUse[];
  readonly machine: MachineProfile;
  /** How boxes are built. */
  readonly box: ShopStandard['box'];
  /** How the drawer's front is screwed on; null or absent where it is not known. */
  readonly fastening?: Fastening | null;
  /** Of lengths in the words; that of the order if absent. */
  readonly unit?: LengthUnit;
}

/** mm. How far the jig is drawn off the front when the scene is drawn apart. */
const JIG_APART = 45;

/**
 * A jig seated on the back of a drawer's front with the box against it, as data to draw and to measure. Null
 * when the jig has no seat for these edges of this drawer.
 */
export function seatScene({
  fit,
  jig,
  uses,
  machine,
  box: built,
  fastening = null,
  unit = fit.unit,
}: SeatRequest): SeatScene | null {
  const chosen = chooseSeat(jig, fit, uses);
  if (chosen === null) return null;
  const edges = chosen.sets.map(({ edge }) => edge);
  const box = boxPlace(fit, chosen.sets);
  const loose = jigSolids(jig, chosen.seat, machine);
  const seated = placed(loose, seatFrame(jig, chosen, fit, box, loose));
  const outwards = edges.map((edge) => scale(edgeFrame(edge, 0, 0).v, -1)).reduce(add);
  const block = blockOf(seated.flatMap(solidPoints));
  const contacts = sceneContacts({ jig, chosen, fit, box, machine, solids: seated });
  const dimensions = sceneDimensions(chosen.sets, fit, box, seated);
  const left = cabinetLeft(fit, edges, block);
  const seen = [...seated.flatMap(solidPoints), ...dimensions.flatMap(({ line }) => line)];
  const middle = centerOf(block);
  return {
    jig: { id: jig.id, kind: jig.kind, hand: jig.hand },
    edges,
    drawer: drawerName(fit.drawer),
    front: { w: fit.frontW, h: fit.frontH, thickness: fit.frontThickness },
    solids: [
      frontSolid(fit),
      ...boxSolids(fit, box, built),
      ...seated.map((solid) => ({ ...solid, apart: add(solid.apart, scale(outwards, JIG_APART)) })),
    ],
    tools: fastening === null ? [] : screwSolids(fastening, box),
    contacts,
    dimensions,
    cabinetLeft: left,
    keepOuts: keepOuts(fit, box, block),
    steps: useSteps({
      edges,
      outwards,
      box,
      boxFront: fit.boxFront,
      rests: contacts.some(({ on }) => on === 'front back'),
      fastening,
      unit,
    }),
    views: standardViews(chosen.sets[0].edge, seen, left.arrow.line),
    section: sectionAcross(chosen.sets[0].edge, block, middle),
    middle,
    notes: ['The box is drawn short, to leave the picture to the seat, and with its joints as is common.'],
  };
}
