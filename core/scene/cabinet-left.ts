import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { Line, SeatScene } from './types.ts';
import type { Block } from './vec.ts';

/** mm. From the jig to the arrow, and the arrow's length below a jig and beside one. */
const OFF = 20;
const LENGTH = { below: 80, beside: 50 } as const;

/**
 * The arrow to the cabinet's left, on the bench next to the jig and past the edge in use, and the edge of the
 * face that goes there. In the back view the cabinet's left is at the right.
 */
export function cabinetLeft(fit: DrawerFit, edges: readonly Edge[], jig: Block): SeatScene['cabinetLeft'] {
  const { frontW, frontH, frontThickness } = fit;
  const z = -frontThickness;
  return {
    arrow: { text: 'Cabinet left', line: arrowLine(edges, jig, z) },
    edge: [
      { x: frontW, y: 0, z },
      { x: frontW, y: frontH, z },
    ],
  };
}

function arrowLine(edges: readonly Edge[], { min, max }: Block, z: number): Line {
  const along = (x: number, y: number, length: number): Line => [
    { x, y, z },
    { x: x + length, y, z },
  ];
  const middle = (min.y + max.y) / 2;
  if (edges.includes('bottom')) return along((min.x + max.x - LENGTH.below) / 2, min.y - OFF, LENGTH.below);
  if (edges.includes('top')) return along((min.x + max.x - LENGTH.below) / 2, max.y + OFF, LENGTH.below);
  return edges.includes('left')
    ? along(max.x + OFF / 2, middle, LENGTH.beside)
    : along(min.x - OFF / 2 - LENGTH.beside, middle, LENGTH.beside);
}
