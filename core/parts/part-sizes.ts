import { bounds } from '../geometry/measure.ts';
import type { Point } from '../geometry/types.ts';
import type { Operation } from '../machine/operations.ts';
import type { Part } from './types.ts';

/** A hole or pocket of a part. Lengths in mm. */
export interface HoleSize {
  readonly operation: Operation;
  /** A round hole has a diameter, any other its width and height. */
  readonly size:
    | { readonly kind: 'round'; readonly diameter: number }
    | { readonly kind: 'other'; readonly width: number; readonly height: number };
  /** Its middle in the part's own coordinates. */
  readonly center: Point;
  /** Its middle from the part's left and lower extents. */
  readonly fromLeft: number;
  readonly fromBottom: number;
  /** Depth from the upper face; null when it goes through. */
  readonly depth: number | null;
}

/** Overall size of a part and the places of its holes. Lengths in mm. */
export interface PartSizes {
  /** The outline's lower left extent in the part's own coordinates. */
  readonly origin: Point;
  readonly width: number;
  readonly height: number;
  readonly holes: readonly HoleSize[];
}

/** Measures a part as the finished piece is measured: by its outline, whatever the machine follows. */
export function partSizes({ features }: Pick<Part, 'features'>): PartSizes {
  const outline = features.filter(({ operation }) => operation === 'cut-outer');
  const { min, max } = bounds(...outline.map(({ contour }) => contour));
  const holes = features.flatMap(({ operation, contour, depth }): readonly HoleSize[] => {
    if (operation === 'engrave' || operation === 'cut-outer') return [];
    const box = bounds(contour);
    const center =
      contour.kind === 'circle'
        ? { x: contour.center.x, y: contour.center.y }
        : { x: (box.min.x + box.max.x) / 2, y: (box.min.y + box.max.y) / 2 };
    const size: HoleSize['size'] =
      contour.kind === 'circle'
        ? { kind: 'round', diameter: 2 * contour.radius }
        : { kind: 'other', width: box.max.x - box.min.x, height: box.max.y - box.min.y };
    const [fromLeft, fromBottom] = [center.x - min.x, center.y - min.y];
    return [{ operation, size, center, fromLeft, fromBottom, depth: depth ?? null }];
  });
  return { origin: min, width: max.x - min.x, height: max.y - min.y, holes };
}
