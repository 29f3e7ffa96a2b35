import type { LimitName, Margin, ScrewPlace } from '../fastening/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { StockScrew } from '../rules/fastening-types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { seenAcross } from './from-edge.ts';
import { alongScrew } from './tool-shapes.ts';
import type { SectionDimension, SectionPoint, SectionShape } from './types.ts';

export interface DimensionsOf {
  readonly place: ScrewPlace;
  readonly fit: DrawerFit;
  readonly edge: Edge;
  readonly screw: StockScrew;
  readonly standard: ShopStandard;
  readonly shapes: readonly SectionShape[];
  /** mm from the edge. How far in the drawing goes: wood that ends there is only cut off. */
  readonly reach: number;
}

/**
 * The limits that a section across an edge can show, each as a line to be dimensioned: the cover at the tip,
 * the bite along the screw, the wood beside the thread, and the room beside the head.
 */
export function sectionDimensions(of: DimensionsOf): readonly SectionDimension[] {
  return [cover(of), bite(of), ...woodBeside(of), ...headBeside(of)].filter((one) => one !== null);
}

function cover({ place, fit, edge, screw }: DimensionsOf): SectionDimension | null {
  const margin = marginOf(place, 'cover');
  if (margin === null) return null;
  const { direction } = place;
  // The lowest point of the cylinder's end: its rim on the side that it leans to.
  const lower = (screw.diameter.value / 2) * Math.hypot(direction.x, direction.y);
  const tip = alongScrew(place, fit, screw.length.value);
  const lowest = seenAcross({ ...tip, z: tip.z - lower }, edge, fit);
  return dimension(margin, lowest, { in: lowest.in, up: lowest.up - margin.is });
}

function bite({ place, fit, edge, screw }: DimensionsOf): SectionDimension | null {
  const margin = marginOf(place, 'bite');
  if (margin === null) return null;
  const enters = seenAcross(alongScrew(place, fit, -fit.boxFront / place.direction.z), edge, fit);
  return dimension(margin, enters, seenAcross(alongScrew(place, fit, screw.length.value), edge, fit));
}

/** From the thread, where it enters the front and at its tip, to either end of its wood and to the groove. */
function woodBeside({
  place,
  fit,
  edge,
  screw,
  standard,
  shapes,
  reach,
}: DimensionsOf): readonly SectionDimension[] {
  const wood = shapes.find(({ id }) => id === `wood ${place.wood}`);
  const least = standard.fastening.edgeMargin.value;
  if (wood === undefined) return [];
  const along = edge === 'left' || edge === 'right' ? place.direction.x : place.direction.y;
  const half = (screw.diameter.value / 2) * Math.sqrt(1 - along ** 2);
  const enters = seenAcross(alongScrew(place, fit, -fit.boxFront / place.direction.z), edge, fit);
  const tip = seenAcross(alongScrew(place, fit, screw.length.value), edge, fit);
  // The fastening holds to the wood that there is at the back, the smaller outline of a bevelled front.
  const ins = wood.outline.flatMap((point) => (point.up === 0 ? [point.in] : []));
  const [outer, inner] = [Math.min(...ins), Math.max(...ins)];
  const [out, inwards] = tip.in < enters.in ? ([tip, enters] as const) : ([enters, tip] as const);
  return [
    level('wood', { ...out, in: out.in - half }, outer, least, 'outwards'),
    ...(inner < reach - SAME_LENGTH
      ? [level('wood', { ...inwards, in: inwards.in + half }, inner, least, 'inwards')]
      : []),
  ];
}

/** From the head's rim to the inside face of the box's side, or to its bottom or edge. */
function headBeside({ place, fit, edge, screw, standard }: DimensionsOf): readonly SectionDimension[] {
  const least = standard.fastening.headRoom.value;
  const along = edge === 'left' || edge === 'right' ? place.direction.x : place.direction.y;
  const half = (screw.headDiameter.value / 2) * Math.sqrt(1 - along ** 2);
  const head = seenAcross({ ...place.entry, z: fit.boxFront }, edge, fit);
  const rim = { in: head.in - half, up: head.up };
  const from = fit.overhang[edge];
  const { raised, thickness } = standard.box.bottom;
  switch (edge) {
    case 'left':
    case 'right':
      return [level('head to box side', rim, from + fit.boxSide, least, 'outwards')];
    case 'bottom':
      return [level('head to box bottom', rim, from + raised.value + thickness.value, least, 'outwards')];
    default:
      return [level('head to box edge', rim, from, least, 'outwards')];
  }
}

/** A level dimension from a point to a line across the section, which must lie on the side named. */
function level(
  limit: LimitName,
  from: SectionPoint,
  to: number,
  least: number,
  side: 'outwards' | 'inwards',
): SectionDimension {
  const is = side === 'outwards' ? from.in - to : to - from.in;
  return { limit, from, to: { in: to, up: from.up }, is, least, fails: is < least - 1e-6 };
}

const dimension = (margin: Margin, from: SectionPoint, to: SectionPoint): SectionDimension => ({
  limit: margin.limit,
  from,
  to,
  is: margin.is,
  least: margin.least,
  fails: margin.over < -1e-6,
});

const marginOf = ({ margins }: ScrewPlace, limit: LimitName): Margin | null =>
  margins.find((one) => one.limit === limit) ?? null;
