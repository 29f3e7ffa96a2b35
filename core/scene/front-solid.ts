import type { DrawerFit } from '../fit/types.ts';
import type { Point } from '../geometry/types.ts';
import { bevelSetback } from '../jigs/lip.ts';
import type { Vec3 } from '../jigs/types.ts';
import { frameWidths } from '../order/frame-widths.ts';
import type { Line, Solid } from './types.ts';

/** How far the edges of the back lie inside the face's outline, mm. */
export const backInset = (fit: DrawerFit): number =>
  bevelSetback({ frontThickness: fit.frontThickness, backBevel: fit.rules.backBevel.value }, 0);

/** The front face down: its face outline below, and a smaller back where its edges are bevelled. */
export function frontSolid(fit: DrawerFit): Solid {
  const { frontW, frontH, frontThickness } = fit;
  const inset = backInset(fit);
  const face = corners(frontW, frontH, 0);
  return {
    id: 'front',
    name: 'Front, face down',
    group: 'front',
    material: 'front',
    pose: { origin: { x: 0, y: 0, z: -frontThickness }, u: { x: 1, y: 0, z: 0 }, v: { x: 0, y: 1, z: 0 } },
    layers: [
      {
        outline: face,
        ...(inset > 0 ? { top: corners(frontW, frontH, inset) } : {}),
        holes: [],
        from: 0,
        to: frontThickness,
      },
    ],
    lines: memberJoints(fit, inset),
    apart: { x: 0, y: 0, z: 0 },
    ghost: false,
  };
}

const corners = (w: number, h: number, inset: number): readonly Point[] => [
  { x: inset, y: inset },
  { x: w - inset, y: inset },
  { x: w - inset, y: h - inset },
  { x: inset, y: h - inset },
];

/** Where the stiles and rails of a five-piece front meet, and where its panel begins, on back and face. */
function memberJoints(fit: DrawerFit, inset: number): readonly Line[] {
  const { frontW: w, frontH: h, frontThickness } = fit;
  const { front } = fit.drawer;
  if (front.kind === 'slab') return [];
  const { stile, rail } = frameWidths(front);
  return [
    { z: 0, edge: inset },
    { z: -frontThickness, edge: 0 },
  ].flatMap(({ z, edge }): readonly Line[] => {
    const at = (x: number, y: number): Vec3 => ({ x, y, z });
    return [
      [at(stile, edge), at(stile, h - edge)],
      [at(w - stile, edge), at(w - stile, h - edge)],
      [at(stile, rail), at(w - stile, rail)],
      [at(stile, h - rail), at(w - stile, h - rail)],
    ];
  });
}
