import type { Point } from '../../geometry/types.ts';
import type { LimitName } from '../types.ts';
import { planeLimit } from './make.ts';
import type { PlaceContext } from './place-context.ts';
import type { PlaneLimit } from './types.ts';

/** The inside of the box in the frame of a corner: planes with what they are in words. */
interface Wall {
  readonly normal: Point;
  readonly offset: number;
  readonly kind: 'side' | 'floor' | 'edge';
  readonly words: string;
}

const X: Point = { x: 1, y: 0 };
const Y: Point = { x: 0, y: 1 };
const BACK_X: Point = { x: -1, y: 0 };
const BACK_Y: Point = { x: 0, y: -1 };

/** The inside faces of both sides, the upper face of the bottom, and the upper edge, from a corner. */
function innerWalls({ walls, spec }: PlaceContext): readonly Wall[] {
  const { end } = spec.corner;
  const floor =
    end === 'bottom'
      ? { normal: Y, offset: walls.floor }
      : { normal: BACK_Y, offset: walls.floor - walls.height };
  const edge = end === 'bottom' ? { normal: BACK_Y, offset: -walls.height } : { normal: Y, offset: 0 };
  return [
    { normal: X, offset: 0, kind: 'side', words: "the box's side" },
    { normal: BACK_X, offset: -walls.innerWidth, kind: 'side', words: "the box's other side" },
    { ...floor, kind: 'floor', words: "the box's bottom" },
    { ...edge, kind: 'edge', words: 'the upper edge of the box front' },
  ];
}

const HEAD: Readonly<Record<Wall['kind'], LimitName>> = {
  side: 'head to box side',
  floor: 'head to box bottom',
  edge: 'head to box edge',
};

/** The head, a disc square to the screw at its entry, keeps its room from all that is about it in the box. */
export function headLimits(context: PlaceContext): readonly PlaneLimit[] {
  const { screw, standard } = context;
  return innerWalls(context).map(({ normal, offset, kind, words }) =>
    planeLimit({
      limit: HEAD[kind],
      against: `the head to ${words}`,
      least: standard.fastening.headRoom.value,
      normal,
      offset,
      part: { kind: 'disc', along: 0, radius: screw.headDiameter.value / 2 },
    }),
  );
}

/** The driver, coaxial cylinders from the head outwards, keeps clear of the sides and of the bottom. */
export function driverLimits(context: PlaceContext): readonly PlaneLimit[] {
  const { standard } = context;
  const { driver, driverRoom } = standard.fastening;
  const walls = innerWalls(context).filter(({ kind }) => kind !== 'edge');
  return driver.flatMap(({ name, radius, length }, index) => {
    const start = driver.slice(0, index).reduce((sum, part) => sum + part.length.value, 0);
    return walls.map(({ normal, offset, kind, words }) => {
      // A leaning driver goes inwards: away from the walls of the corner, towards those across the box.
      const nearest = normal.x + normal.y > 0 ? start : start + length.value;
      return planeLimit({
        limit: kind === 'side' ? 'driver to box side' : 'driver to box bottom',
        against: `the ${name} to ${words}`,
        least: driverRoom.value,
        normal,
        offset,
        part: { kind: 'disc', along: -nearest, radius: radius.value },
      });
    });
  });
}

/** While it is in the box front, the screw stays within the outside of the box, thread and edge margin. */
export function screwInBoxLimits({ screw, standard, walls, spec }: PlaceContext): readonly PlaneLimit[] {
  const radius = screw.diameter.value / 2;
  const held = {
    limit: 'screw in box',
    least: standard.fastening.edgeMargin.value,
    part: { kind: 'slice', along: walls.front, radius },
  } as const;
  const edge = spec.corner.end === 'bottom' ? 'lower' : 'upper';
  return [
    planeLimit({ ...held, against: "the outer face of the box's side", normal: X, offset: -walls.side }),
    planeLimit({ ...held, against: `the ${edge} edge of the box front`, normal: Y, offset: 0 }),
  ];
}

/** The entry stays in its own part of the box front, so that heads do not meet. */
export function otherScrewLimits({ spec }: PlaceContext): readonly PlaneLimit[] {
  const held = {
    limit: 'other screw',
    against: 'the next screw',
    least: 0,
    part: { kind: 'disc', along: 0, radius: 0 },
  } as const;
  return [
    planeLimit({ ...held, normal: X, offset: spec.from.x }),
    planeLimit({ ...held, normal: BACK_X, offset: -spec.to.x }),
    planeLimit({ ...held, normal: Y, offset: spec.from.y }),
    planeLimit({ ...held, normal: BACK_Y, offset: -spec.to.y }),
  ];
}
