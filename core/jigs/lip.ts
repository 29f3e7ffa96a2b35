import { tanDegrees } from '../units/angle.ts';
import { BENCH_CLEARANCE, DUST_RELIEF, SHORTEST_REGISTER } from './proportions.ts';
import type { FrontEdge } from './types.ts';
import { mmText } from '../units/mm-text.ts';

/** The hook of a jig behind the front's edge, built of sheet layers. Lengths in mm. */
export interface Lip {
  readonly layers: number;
  readonly depth: number;
  /** The layer next to the plate stands back from the edge, and leaves room for glue and dust. */
  readonly relief: 'layer' | 'rabbet' | 'none';
  /** How far the edge has come in from the face's outline where the lip meets it. */
  readonly setback: number;
}

/**
 * How far a back-bevelled edge lies inside the face's outline at a depth below the back, mm.
 *
 *     back  ____________________   depth 0
 *          /
 *         /  <- lip touches here   depth of the lip
 *        /___________________      face: the outline that overhangs are measured from
 */
export const bevelSetback = (edge: FrontEdge, depth: number): number =>
  (edge.frontThickness - depth) * tanDegrees(edge.backBevel);

/**
 * The lip for an edge, or why none is possible. A square edge takes as few layers as register safely. A
 * bevelled edge takes as many as stay clear of the bench, so as to register close to the face.
 *
 * @param thickness of a sheet, mm
 */
export function designLip(edge: FrontEdge, thickness: number, router: boolean): Lip | string {
  const room = edge.frontThickness - BENCH_CLEARANCE;
  const most = Math.floor(room / thickness + 1e-9);
  if (most < 1) {
    return `a sheet of ${mmText(thickness)} is too thick for a lip behind a front of ${mmText(edge.frontThickness)}, which must stay ${mmText(BENCH_CLEARANCE)} clear of the bench`;
  }
  const relief =
    most >= 2 && thickness * (most - 1) >= SHORTEST_REGISTER ? 'layer' : router ? 'rabbet' : 'none';
  const taken = relief === 'layer' ? thickness : relief === 'rabbet' ? DUST_RELIEF : 0;
  const fewest = Math.ceil((taken + SHORTEST_REGISTER) / thickness - 1e-9);
  if (fewest > most) {
    return `${most} ${most === 1 ? 'layer' : 'layers'} of ${mmText(thickness)} leave less than ${mmText(SHORTEST_REGISTER)} of lip to register on a front of ${mmText(edge.frontThickness)}`;
  }
  const layers = edge.backBevel > 0 ? most : fewest;
  const depth = layers * thickness;
  return { layers, depth, relief, setback: bevelSetback(edge, depth) };
}
