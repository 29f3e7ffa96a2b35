import { Clipper, EndType, FillRule, JoinType, type Path64, type Paths64 } from 'clipper2-ts';
import type { Point } from '../../core/geometry/types.ts';

/** Clipper units in a millimetre. */
const SCALE = 10_000;

/** mm. Rounding of the clipper's grid, flattening, and what an exported contour may stray. */
const SLACK = 0.01;

/** mm². An overlap smaller than this is a shared line. */
const LEAST_AREA = 0.01;

/** A thing on a sheet, for the judge: its name and its outline in straight sides. */
export interface Outline {
  readonly name: string;
  readonly points: readonly Point[];
}

const pathOf = (points: readonly Point[]): Path64 =>
  points.map(({ x, y }) => ({ x: Math.round(x * SCALE), y: Math.round(y * SCALE) }));

const grown = (path: Path64, by: number): Paths64 =>
  Clipper.inflatePaths([path], by * SCALE, JoinType.Round, EndType.Polygon, 2, 0.001 * SCALE);

const areaOf = (paths: Paths64): number =>
  Math.abs(paths.reduce((sum, path) => sum + Clipper.area(path), 0)) / SCALE ** 2;

const upright = (path: Path64): Path64 => (Clipper.area(path) < 0 ? path.toReversed() : path);

const range = (values: readonly number[]) => ({ least: Math.min(...values), most: Math.max(...values) });

/** Whether all of one lies further to one side of the other than the spacing. */
const farApart = (a: readonly Point[], b: readonly Point[], spacing: number): boolean =>
  (['x', 'y'] as const).some((axis) => {
    const [ofA, ofB] = [range(a.map((point) => point[axis])), range(b.map((point) => point[axis]))];
    return Math.max(ofA.least - ofB.most, ofB.least - ofA.most) > spacing;
  });

/**
 * What is wrong with a layout, judged by a polygon library and nothing of the packer: things nearer to each other
 * than the spacing, or nearer to the sheet's edge than the margin.
 */
export function layoutFaults(
  outlines: readonly Outline[],
  sheet: { readonly width: number; readonly height: number },
  { edgeMargin, spacing }: { readonly edgeMargin: number; readonly spacing: number },
): readonly string[] {
  const near = outlines.map(({ name, points }) => {
    const path = upright(pathOf(points));
    return { name, points, half: spacing > SLACK ? grown(path, (spacing - SLACK) / 2) : [path] };
  });
  const out = near.flatMap(({ name, points }) =>
    points.some(({ x, y }) => Math.min(x, y, sheet.width - x, sheet.height - y) < edgeMargin - SLACK / 100)
      ? [`${name} stands into the margin`]
      : [],
  );
  return [
    ...out,
    ...near.flatMap((a, index) =>
      near.slice(index + 1).flatMap((b) => {
        if (farApart(a.points, b.points, spacing)) return [];
        const shared = areaOf(Clipper.intersect(a.half, b.half, FillRule.NonZero));
        return shared > LEAST_AREA ? [`${a.name} and ${b.name} are too near: ${shared} mm²`] : [];
      }),
    ),
  ];
}
