import { boxWalls } from '../fastening/box-walls.ts';
import type { Corner, Fastening } from '../fastening/types.ts';
import { drawerName } from '../fit/drawer-name.ts';
import { boxCornerFrame, topCornerFrame } from '../jigs/aids/aid-frame.ts';
import { edgeFrame } from '../jigs/edge-frame.ts';
import type { Jig, Pose } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Edge } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { aidContacts } from './aid-contacts.ts';
import { aidSteps } from './aid-steps.ts';
import { boxPlace } from './box-place.ts';
import { boxSolids } from './box-solids.ts';
import { cabinetLeft } from './cabinet-left.ts';
import { frontSolid } from './front-solid.ts';
import { jigSolids } from './jig-solids.ts';
import { placed } from './place-jig.ts';
import { screwSolids } from './screw-solids.ts';
import { sectionAcross } from './section.ts';
import { solidPoints } from './solid-points.ts';
import type { SeatScene } from './types.ts';
import { add, blockOf, centerOf, ORIGIN, scale, UP } from './vec.ts';
import { standardViews } from './views.ts';

export interface AidRequest {
  readonly fastening: Fastening;
  readonly jig: Jig;
  /** Of the box, for a drill guide; null for a pull template. */
  readonly corner: Corner | null;
  readonly standard: ShopStandard;
  readonly machine: MachineProfile;
}

/** mm. How far an aid is drawn off when the scene is drawn apart. */
const AID_APART = 60;

/**
 * A drill guide seated in its corner of the box, or a pull template on the back of the front, as data to draw
 * and to measure. Null when the jig has no seat.
 */
export function aidScene({ fastening, jig, corner, standard, machine }: AidRequest): SeatScene | null {
  const { fit } = fastening;
  const [seat] = jig.seats;
  if (seat === undefined) return null;
  const edges: readonly [Edge, ...Edge[]] =
    corner === null ? (jig.hand === null ? ['top'] : ['top', jig.hand]) : [corner.end, corner.hand];
  const box = boxPlace(fit, []);
  const seated = placed(
    jigSolids(jig, seat, machine),
    frameOf(seat.frame, { fastening, jig, corner, standard }),
  );
  const outwards = edges.map((edge) => scale(edgeFrame(edge, 0, 0).v, -1)).reduce(add);
  const apart = scale(corner === null ? outwards : UP, AID_APART);
  const block = blockOf(seated.flatMap(solidPoints));
  const middle = centerOf(block);
  const left = cabinetLeft(fit, edges, block);
  const bits = screwSolids(fastening, box).filter(
    ({ group, corner: own }) => group === 'bit' && own?.hand === corner?.hand && own?.end === corner?.end,
  );
  return {
    jig: { id: jig.id, kind: jig.kind, hand: jig.hand },
    edges,
    drawer: drawerName(fit.drawer),
    front: { w: fit.frontW, h: fit.frontH, thickness: fit.frontThickness },
    solids: [
      frontSolid(fit),
      ...(corner === null
        ? []
        : boxSolids(fit, box, standard.box).map((solid) => ({ ...solid, apart: ORIGIN }))),
      ...seated.map((solid) => ({ ...solid, apart: add(solid.apart, apart) })),
    ],
    tools: bits,
    contacts: aidContacts({ jig, fit, walls: boxWalls(fit, standard), machine, solids: seated }),
    dimensions: [],
    cabinetLeft: left,
    keepOuts: [],
    steps: aidSteps(jig, corner, outwards),
    views: standardViews(edges[0], seated.flatMap(solidPoints), left.arrow.line),
    section: sectionAcross(edges[0], block, middle),
    middle,
    notes: corner === null ? [] : ['The box is drawn short, to leave the picture to the seat.'],
  };
}

function frameOf(
  frame: Jig['seats'][number]['frame'],
  {
    fastening: { fit },
    jig,
    corner,
    standard,
  }: Pick<AidRequest, 'fastening' | 'jig' | 'corner' | 'standard'>,
): Pose {
  if (corner !== null) return boxCornerFrame(fit, corner, standard);
  if (frame === 'top corner' && jig.hand !== null) return topCornerFrame(fit, jig.hand);
  return edgeFrame('top', fit.frontW, fit.frontH);
}
