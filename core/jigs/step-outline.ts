import type { Point, RingContour, Vertex } from '../geometry/types.ts';
import { SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { SOFT_CORNER } from './proportions.ts';
import { roundCorners } from './round-corners.ts';
import type { Contact } from './types.ts';

// All in mm; common practice, no source.

/** Of the body behind the lip's face, and of its top above the back of the front. */
const BODY = 60;
const TOP = 44;

/** A foot below the back would touch a box that stands proud: it stays this far down. */
const BELOW_BOX = 1.5;

/** The corner between box and front is left free for glue and dust. */
const GLUE_CHAMFER = 1.5;

interface Step {
  /** From the lip's face to the box; negative if the box stands proud. */
  readonly reach: number;
  /** Of the lip below the back of the front. */
  readonly depth: number;
  /** Height of the face on the box. */
  readonly face: number;
  /** Radius of the relief in the lip. */
  readonly relief: number;
}

/**
 * The step profile in its own coordinates: x inwards from the lip's face, y up from the back of the front.
 * Above the face on the box all of it slopes away, so that it cannot be used upside down.
 */
export function stepOutline({ reach, depth, face, relief }: Step): {
  readonly outline: RingContour;
  readonly contacts: readonly Contact[];
} {
  const behind = -BODY + Math.min(0, reach);
  const rests = reach > 2 * SHORTEST_SEGMENT;
  const proud = reach < -2 * SHORTEST_SEGMENT;
  const chamfer = rests ? Math.min(GLUE_CHAMFER, reach / 2) : 0;
  const x = proud || rests ? reach : 0;
  // The lip's relief is cut into the lip and not under the step, so that a narrow step keeps its bearing.
  const lip: readonly Vertex[] = proud
    ? [corner(0, -depth), corner(0, -BELOW_BOX), corner(reach, -BELOW_BOX)]
    : [corner(0, -depth), { x: 0, y: -2 * relief, bulge: -1 }, corner(0, 0)];
  const step: readonly Vertex[] = rests ? [corner(reach - chamfer, 0), corner(reach, chamfer)] : [];
  const vertices = [
    corner(behind, -depth),
    ...lip,
    ...step,
    corner(x, face),
    corner(x - (TOP - face), TOP),
    corner(behind, TOP),
  ];
  const touching = (on: Contact['on'], from: Point, to: Point): Contact => ({
    piece: 'profile',
    on,
    line: [from, to],
  });
  return {
    outline: roundCorners({ kind: 'ring', vertices }, [vertices.length - 1, 0], SOFT_CORNER),
    contacts: [
      touching('front edge', { x: 0, y: -depth }, { x: 0, y: proud ? -BELOW_BOX : -2 * relief }),
      touching('box', { x, y: chamfer }, { x, y: face }),
      ...(rests ? [touching('front back', { x: 0, y: 0 }, { x: reach - chamfer, y: 0 })] : []),
    ],
  };
}

const corner = (x: number, y: number): Vertex => ({ x, y, bulge: 0 });
