import { tanDegrees } from '../units/angle.ts';
import type { Lip } from './lip.ts';
import type { FrontEdge, Sensitivity } from './types.ts';

/**
 * Of a plate with a layered lip: both working faces look the same way and are held to each other by the
 * centres of holes, so a cut that takes more or less moves both alike. On a bevelled edge a thicker sheet
 * makes a deeper lip, which meets the edge farther out.
 */
export function bevelSensitivity(edge: FrontEdge, lip: Lip): Sensitivity {
  const sheetThickness = -lip.layers * tanDegrees(edge.backBevel) || 0;
  const kerf = 'kerf 0: plate and lip are cut facing the same way and pinned by the centres of holes';
  return {
    kerf: 0,
    sheetThickness,
    why:
      sheetThickness === 0
        ? `${kerf}; thickness 0: the edge is square, so the depth of the lip does not matter`
        : `${kerf}; thickness: a deeper lip meets the bevelled edge nearer to the face`,
  };
}
