import { mirrorX } from '../geometry/mirror.ts';
import type { Point } from '../geometry/types.ts';
import type { Drilling, Jig, Piece, Pose, Seat, Vec3 } from './types.ts';

/**
 * The other hand of a jig: outlines, holes and seats mirrored left to right. Labels keep their text, which
 * is set afresh in its mirrored place and so stays readable.
 */
export function mirrorJig(jig: Jig): Jig {
  return {
    ...jig,
    hand: jig.hand === 'left' ? 'right' : jig.hand === 'right' ? 'left' : null,
    pieces: jig.pieces.map(mirrorPiece),
    seats: jig.seats.map(mirrorSeat),
    ...(jig.drilling === undefined ? {} : { drilling: mirrorDrilling(jig.drilling) }),
  };
}

const mirrorDrilling = (drilling: Drilling): Drilling => ({
  ...drilling,
  bores: drilling.bores.map((bore) => ({
    ...bore,
    at: mirrorPoint(bore.at),
    slope: mirrorPoint(bore.slope),
    shift: mirrorPoint(bore.shift),
  })),
  kerfShift: mirrorPoint(drilling.kerfShift),
});

/** The one mirror works on contours; a point goes through it as a path of one vertex. */
function mirrorPoint({ x, y }: Point): Point {
  const [vertex] = mirrorX({ kind: 'path', vertices: [{ x, y, bulge: 0 }] }, 0).vertices;
  if (vertex === undefined) throw new RangeError('mirror: lost a point');
  return { x: vertex.x || 0, y: vertex.y };
}

const mirrorVec = (vec: Vec3): Vec3 => ({ ...mirrorPoint(vec), z: vec.z });

const mirrorPiece = (piece: Piece): Piece => ({
  ...piece,
  outline: mirrorX(piece.outline, 0),
  holes: piece.holes.map((hole) => ({
    ...hole,
    contour: mirrorX(hole.contour, 0),
    seatCorners: hole.seatCorners.map(mirrorPoint),
  })),
  pockets: piece.pockets.map((pocket) => ({ ...pocket, contour: mirrorX(pocket.contour, 0) })),
  seatCorners: piece.seatCorners.map(mirrorPoint),
  labels: piece.labels.map((label) => ({ ...label, center: mirrorPoint(label.center) })),
  ...(piece.marks === undefined ? {} : { marks: piece.marks.map((mark) => mirrorX(mark, 0)) }),
});

/** A mirrored piece in a mirrored place: its own x runs the other way, so u is mirrored and turned about. */
const mirrorPose = (pose: Pose): Pose => {
  const u = mirrorVec(pose.u);
  return {
    origin: mirrorVec(pose.origin),
    u: { x: -u.x || 0, y: -u.y || 0, z: -u.z || 0 },
    v: mirrorVec(pose.v),
  };
};

const mirrorSeat = (seat: Seat): Seat => ({
  ...seat,
  poses: seat.poses.map(({ piece, pose }) => ({ piece, pose: mirrorPose(pose) })),
  contacts: seat.contacts.map((contact) =>
    contact.line === undefined
      ? contact
      : { ...contact, line: [mirrorPoint(contact.line[0]), mirrorPoint(contact.line[1])] },
  ),
});
