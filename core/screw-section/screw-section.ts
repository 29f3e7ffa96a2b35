import { depthStop } from '../fastening/depth-stop.ts';
import type { Fastening, ScrewPlace } from '../fastening/types.ts';
import { woodsOf } from '../fastening/woods.ts';
import type { StockScrew } from '../rules/fastening-types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { backdrop } from './backdrop.ts';
import { edgeAcross, fromEdge } from './from-edge.ts';
import { sectionDimensions } from './section-dimensions.ts';
import { toolShapes } from './tool-shapes.ts';
import type { ScrewSection } from './types.ts';

/** mm. How far past the screw's head the drawing goes, inwards and up. */
const BEYOND = { in: 55, up: 45 } as const;

/**
 * A screw of a drawer to scale, across its side edge or across its rail, with the limits that can be seen there.
 * Where no place is possible, the nearest miss is drawn with the screw that came nearest.
 */
export function screwSection(
  fastening: Fastening,
  place: ScrewPlace,
  screw: StockScrew,
  standard: ShopStandard,
  across: ScrewSection['across'],
): ScrewSection {
  const { fit, holes } = fastening;
  const edge = edgeAcross(place, across);
  const head = fromEdge(place.entry, edge, fit);
  const reach = { in: head + BEYOND.in, up: fit.boxFront + BEYOND.up };
  const shapes = backdrop(place, edge, { fit, standard, woods: woodsOf(fit) }, reach);
  const pilot =
    holes === null ? null : { diameter: holes.pilotDiameter, to: depthStop(place, holes, fit, 0) };
  return {
    across,
    title: across === 'side' ? `across the side, cabinet's ${edge}` : `across the ${edge} edge`,
    shapes,
    tools: toolShapes(place, fit, edge, { screw, driver: standard.fastening.driver, pilot }),
    dimensions: sectionDimensions({ place, fit, edge, screw, standard, shapes, reach: reach.in }),
    margins: place.margins,
    extents: { in: [0, reach.in], up: [-fit.frontThickness, reach.up] },
  };
}
