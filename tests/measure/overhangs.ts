import type { ReadEntity } from '../readers/types.ts';
import { crossings, flatten } from './outline.ts';

/** A part as a reader saw it: what matters for measuring what its jig sets. Lengths in mm. */
export interface MeasuredPart {
  readonly outline: readonly (readonly [number, number])[];
  /** Centres of the holes that hold the layers in register. */
  readonly holes: readonly (readonly [number, number])[];
}

const HANG_HOLE = 3.5;

/** Takes a part's outline and register holes out of a file, by its layers and the sizes of what is there. */
export function measuredPart(entities: readonly ReadEntity[]): MeasuredPart {
  const outers = entities.filter(({ layer }) => layer === 'CUT_OUTSIDE');
  const [outer] = outers;
  if (outer === undefined || outers.length !== 1) throw new Error(`${outers.length} outlines in a part`);
  const holes = entities
    .filter(({ layer }) => layer === 'CUT_INSIDE' || layer === 'DRILL')
    .flatMap(({ circle, vertices }) => {
      if (circle !== null) {
        // The hole to hang the jig by is the only one of this size, give or take half a kerf.
        return Math.abs(circle[2] - HANG_HOLE) < 0.2 ? [] : [[circle[0], circle[1]] as const];
      }
      const xs = vertices.map(([x]) => x);
      const ys = vertices.map(([, y]) => y);
      const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
      return [[middle(xs), middle(ys)] as const];
    });
  return { outline: flatten(outer.vertices), holes: holes.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]) };
}

const last = (values: readonly number[]): number => values.at(-1) ?? Number.NaN;
const first = (values: readonly number[]): number => values[0] ?? Number.NaN;

/** Holes of `a` beside those of `b` that have the same x. */
const sharedHoles = (a: MeasuredPart, b: MeasuredPart) =>
  a.holes.flatMap((hole) => {
    const twin = b.holes.find(([x]) => Math.abs(x - hole[0]) < 0.01);
    return twin === undefined ? [] : [{ a: hole, b: twin }];
  });

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Near an end, where a working edge has its land. */
const onLand = ({ outline }: MeasuredPart): number => Math.max(...outline.map(([x]) => x)) - 6;

/** From the lip's face to the plate's, both looking up the page, lined up by the holes. */
export function hookedReach(plate: MeasuredPart, lip: MeasuredPart): number {
  const offsets = sharedHoles(plate, lip).map(({ a, b }) => b[1] - a[1]);
  if (offsets.length < 3) throw new Error('plate and lip share fewer than three holes');
  const plateEdge = last(crossings(plate.outline, 'x', onLand(plate)));
  const lipEdge = last(crossings(lip.outline, 'x', onLand(lip)));
  return plateEdge - (lipEdge - mean(offsets));
}

/** The two reaches of a block whose lips are drawn with their faces down, as seen from outside. */
export function twoWayReaches(plate: MeasuredPart, wide: MeasuredPart, narrow: MeasuredPart) {
  const high = last(crossings(plate.outline, 'x', onLand(plate)));
  const low = first(crossings(plate.outline, 'x', onLand(plate)));
  const face = (lip: MeasuredPart) => first(crossings(lip.outline, 'x', onLand(lip)));
  const wideFaces = sharedHoles(plate, wide).map(({ a, b }) => a[1] + (b[1] - face(wide)));
  const narrowFaces = sharedHoles(plate, narrow).map(({ a, b }) => a[1] - (b[1] - face(narrow)));
  if (wideFaces.length < 3 || narrowFaces.length < 3) throw new Error('a lip shares fewer than three holes');
  return { wide: high - mean(wideFaces), narrow: mean(narrowFaces) - low };
}

/** The step of a profile: from the lip's face, above the rounding of a tool path at its foot, to the face on the box. */
export function stepReach({ outline }: MeasuredPart): number {
  const foot = Math.min(...outline.map(([, y]) => y));
  return last(crossings(outline, 'y', 10)) - last(crossings(outline, 'y', foot + 5));
}

/** Bottom and side reach of a corner fence, on either hand. */
export function cornerReaches(plate: MeasuredPart, lip: MeasuredPart, hand: 'left' | 'right') {
  const offsets = plate.holes.map((hole, index) => {
    const twin = lip.holes[index];
    if (twin === undefined) throw new Error('plate and lip differ in holes');
    return [twin[0] - hole[0], twin[1] - hole[1]] as const;
  });
  const [dx, dy] = [mean(offsets.map(([x]) => x)), mean(offsets.map(([, y]) => y))];
  const xs = plate.outline.map(([x]) => x);
  const top = Math.max(...plate.outline.map(([, y]) => y)) - 12;
  const far = hand === 'right' ? Math.max(...xs) - 12 : Math.min(...xs) + 12;
  const inner = (values: readonly number[]) => (hand === 'right' ? last(values) : first(values));
  const sign = hand === 'right' ? 1 : -1;
  const bottom =
    last(crossings(plate.outline, 'x', far)) - (last(crossings(lip.outline, 'x', far + dx)) - dy);
  const side =
    sign * (inner(crossings(plate.outline, 'y', top)) - (inner(crossings(lip.outline, 'y', top + dy)) - dx));
  return { bottom, side };
}
