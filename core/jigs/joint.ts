import { circle } from '../geometry/circle.ts';
import { rectangle } from '../geometry/rectangle.ts';
import type { Point } from '../geometry/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Hole, Piece, Pin } from './types.ts';

/** mm. All differ, so that each key fits one slot; common practice, no source. */
const KEY_WIDTHS: readonly [number, number, number] = [12, 10, 8];

/** Three places of a joint that no turning or flipping brings onto each other. */
export type JointPlaces = readonly [Point, Point, Point];

/**
 * Places along a strip: a scalene triangle, told apart from its own mirror image, so that a layer goes on
 * in one way only. `pattern` keeps the lips of a two-way block from being swapped. Lengths in mm.
 */
export function jointPlaces(
  length: number,
  middle: number,
  pattern: 'first' | 'second' = 'first',
): JointPlaces {
  const [a, b, c] = pattern === 'first' ? [-0.3, -0.06, 0.36] : [-0.38, 0.02, 0.26];
  return [
    { x: a * length, y: middle + 1.2 },
    { x: b * length, y: middle - 1.2 },
    { x: c * length, y: middle + 1.2 },
  ];
}

/** The room along a strip between two neighbouring places of a joint, for a label: its middle x and width, mm. */
export function roomBetween(
  places: JointPlaces,
  left: 0 | 1,
  right: 1 | 2,
): { readonly x: number; readonly width: number } {
  const from = places[left].x + keyWidth(left) / 2 + LABEL_GAP;
  const to = places[right].x - keyWidth(right) / 2 - LABEL_GAP;
  return { x: (from + to) / 2, width: to - from };
}

/** mm. Between a label and a hole; common practice, no source. */
const LABEL_GAP = 1.5;

/** The holes of a joint: for round pins, or slots for keys that are cut from the same sheet. */
export function jointHoles(places: JointPlaces, machine: MachineProfile): readonly Hole[] {
  return places.map((place, index): Hole => {
    if (machine.joint === 'pin') {
      return {
        contour: circle(place, (machine.pinDiameter + machine.fit.pin) / 2),
        purpose: 'joint',
        seatCorners: [],
      };
    }
    const width = keyWidth(index) + machine.fit.slot;
    const height = machine.sheet.thickness + machine.fit.slot;
    const slot = rectangle(width, height, { x: place.x - width / 2, y: place.y - height / 2 });
    return { contour: slot, purpose: 'joint', seatCorners: slot.vertices.map(({ x, y }) => ({ x, y })) };
  });
}

/** The pins that hold so many layers at the joint's three places; none where keys do. */
export const jointPins = (layers: number, { joint, pinDiameter, sheet }: MachineProfile): readonly Pin[] =>
  joint === 'pin' ? [{ count: 3, diameter: pinDiameter, length: layers * sheet.thickness }] : [];

/** The keys that fill the slots of a joint through so many layers; none for pins, which are bought. */
export function jointKeys(
  prefix: string,
  layers: number,
  machine: MachineProfile,
  id: string,
): readonly Piece[] {
  if (machine.joint === 'pin') return [];
  const height = layers * machine.sheet.thickness;
  // A long id on a narrow key is written along it.
  const turned = (width: number): boolean => id.length > 3 && height > width + 2;
  return KEY_WIDTHS.map((width, index): Piece => ({
    name: `${prefix}key-${width}`,
    copies: 1,
    outline: rectangle(width, height, { x: -width / 2, y: 0 }),
    holes: [],
    pockets: [],
    seatCorners: [],
    labels: [
      {
        phrases: [id, `K${index + 1}`],
        center: { x: 0, y: height / 2 },
        ...(turned(width)
          ? { width: height - 2, height: width - 2, angle: 90 }
          : { width: width - 2, height: height - 2 }),
      },
    ],
  }));
}

/** Width in mm of the key at one of a joint's places. */
export const keyWidth = (index: number): number => KEY_WIDTHS[index] ?? KEY_WIDTHS[0];
