import type { ScrewPlace } from '../fastening/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Vec3 } from '../jigs/types.ts';
import type { Edge } from '../order/types.ts';
import type { DriverPart, StockScrew } from '../rules/fastening-types.ts';
import { seenAcross } from './from-edge.ts';
import type { SectionPoint, SectionTool } from './types.ts';

/** mm. A pan or washer head stands up this share of its width; common practice, no source. */
const HEAD_HEIGHT = 0.3;

/** mm. The point of a screw is drawn this many diameters long; its limits are those of the whole cylinder. */
const POINT = 1;

/** The point of a screw's axis so far from its head towards its tip, mm. */
export function alongScrew({ entry, direction }: ScrewPlace, { boxFront }: DrawerFit, by: number): Vec3 {
  return {
    x: entry.x + direction.x * by,
    y: entry.y + direction.y * by,
    z: boxFront + direction.z * by,
  };
}

/** The screw, its pilot hole and its driver as a section across an edge shows them. */
export function toolShapes(
  place: ScrewPlace,
  fit: DrawerFit,
  edge: Edge,
  { screw, driver, pilot }: ToolsOf,
): readonly SectionTool[] {
  const length = screw.length.value;
  const axis = (from: number, to: number): readonly [SectionPoint, SectionPoint] => [
    seenAcross(alongScrew(place, fit, from), edge, fit),
    seenAcross(alongScrew(place, fit, to), edge, fit),
  ];
  const band = (from: number, to: number, atFrom: number, atTo: number): readonly SectionPoint[] =>
    taper(...axis(from, to), atFrom, atTo);
  const [radius, root, head] = [screw.diameter.value / 2, screw.root.value / 2, screw.headDiameter.value / 2];
  const point = Math.min(POINT * screw.diameter.value, length / 2);
  const sunk = screw.head === 'flat';
  const height = HEAD_HEIGHT * screw.headDiameter.value;
  const parts: SectionTool[] = [
    ...(pilot === null
      ? []
      : [
          {
            id: 'pilot',
            part: 'pilot' as const,
            name: 'pilot hole',
            outline: band(0, pilot.to, pilot.diameter / 2, pilot.diameter / 2),
          },
        ]),
    {
      id: 'screw',
      part: 'screw',
      name: 'screw',
      outline: [
        ...band(0, length - point, radius, radius).slice(0, 2),
        ...band(length - point, length, radius, root / 4),
        ...band(0, length - point, radius, radius).slice(2),
      ],
    },
    {
      id: 'head',
      part: 'head',
      name: 'head',
      outline: sunk ? band(0, head - root, head, root) : band(-height, 0, head, head),
    },
  ];
  let from = sunk ? 0 : height;
  for (const cylinder of driver) {
    const to = from + cylinder.length.value;
    parts.push({
      id: `driver-${cylinder.name}`,
      part: 'driver',
      name: cylinder.name,
      outline: band(-from, -to, cylinder.radius.value, cylinder.radius.value),
    });
    from = to;
  }
  return parts;
}

export interface ToolsOf {
  readonly screw: StockScrew;
  readonly driver: readonly DriverPart[];
  /** mm; `to` along the screw from its head. */
  readonly pilot: { readonly diameter: number; readonly to: number } | null;
}

/** A strip about the line from `a` to `b`, half so wide at either end. */
function taper(a: SectionPoint, b: SectionPoint, atA: number, atB: number): readonly SectionPoint[] {
  const long = Math.hypot(b.in - a.in, b.up - a.up) || 1;
  const across = { in: -(b.up - a.up) / long, up: (b.in - a.in) / long };
  const at = (point: SectionPoint, off: number): SectionPoint => ({
    in: point.in + across.in * off,
    up: point.up + across.up * off,
  });
  return [at(a, atA), at(b, atB), at(b, -atB), at(a, -atA)];
}
