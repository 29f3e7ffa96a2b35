import { bounds } from '../geometry/measure.ts';
import { rotate, translate } from '../geometry/transform.ts';
import type { Contour } from '../geometry/types.ts';
import { OPERATIONS } from '../machine/operations.ts';
import type { Feature, Part } from '../parts/types.ts';
import type { PlacedPart, Sheet } from './types.ts';

/**
 * The features of a part where it lies on its sheet; quarter turns are exact. `features` are the part's own unless
 * told: what a machine follows, say, drawn about the same origin.
 */
export function placedFeatures(
  { part, turns, x, y }: PlacedPart,
  features: readonly Feature[] = part.features,
): readonly Feature[] {
  const turned = <C extends Contour>(contour: C): C => rotate(contour, 90 * turns);
  const { min } = bounds(...part.features.map(({ contour }) => turned(contour)));
  const by = { x: x - min.x, y: y - min.y };
  return features.map((feature) => ({ ...feature, contour: translate(turned(feature.contour), by) }));
}

/**
 * All features of a sheet in the order in which they should run: engraving first, insides before outlines, and
 * within an operation part by part, each near the one before.
 */
export function sheetFeatures(
  { placed }: Sheet,
  featuresOf: (part: Part) => readonly Feature[] = ({ features }) => features,
): readonly Feature[] {
  const all = placed.flatMap((one) => placedFeatures(one, featuresOf(one.part)));
  return OPERATIONS.flatMap((operation) => all.filter((feature) => feature.operation === operation));
}
