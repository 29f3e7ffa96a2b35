import type { Finding, Outcome } from '../findings/finding.ts';
import { error, warning } from '../findings/make.ts';
import { relieveCorners } from '../geometry/relief.ts';
import { clockwise } from '../geometry/orient.ts';
import type { CircleContour, Point, RingContour } from '../geometry/types.ts';
import { contourProblems } from '../geometry/validate.ts';
import type { Hole, Jig, Piece } from '../jigs/types.ts';
import { engraveLabel } from './engrave-label.ts';
import { mmText } from '../units/mm-text.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { StrokeFont } from './stroke-font.ts';
import type { Feature, Part } from './types.ts';

/** mm. A hole this near to the tool's diameter is drilled with it. */
const AS_DRILLED = 0.01;

/**
 * One piece of a jig as a part of sheet: outline, reliefs, holes, pockets and strokes of text, at the sizes
 * that the finished part has. `compensate` turns it into what the machine follows.
 */
export function makePart(jig: Jig, piece: Piece, machine: MachineProfile, font: StrokeFont): Outcome<Part> {
  const id = `${jig.id}-${piece.name}`;
  const findings: Finding[] = [];
  const relieved = (ring: RingContour, corners: readonly Point[]): RingContour => {
    const relief = relieveCorners(ring, corners, machine.reliefRadius);
    for (const { corner, reason } of relief.reliefs) {
      if (reason !== undefined) findings.push(notRelieved(id, corner, reason));
    }
    return relief.ring;
  };
  const holeFeature = ({ contour, seatCorners, purpose }: Hole): Feature =>
    contour.kind === 'circle'
      ? { operation: drills(contour, machine, purpose) ? 'drill' : 'cut-inner', contour }
      : {
          operation: 'cut-inner',
          contour: machine.kind === 'router' ? relieved(clockwise(contour), seatCorners) : contour,
        };

  const engraving = piece.labels.map((label) => engraveLabel(label, id, font, machine));
  const features: readonly Feature[] = [
    ...engraving.flatMap(({ value }) =>
      value.map((contour): Feature => ({ operation: 'engrave', contour, depth: ENGRAVE_DEPTH })),
    ),
    ...(piece.marks ?? []).map((contour): Feature => ({
      operation: 'engrave',
      contour,
      depth: ENGRAVE_DEPTH,
    })),
    ...piece.pockets.map(({ contour, depth }): Feature => ({ operation: 'pocket', contour, depth })),
    ...piece.holes.map(holeFeature),
    { operation: 'cut-outer', contour: relieved(piece.outline, piece.seatCorners) },
  ];
  findings.push(
    ...engraving.flatMap((label) => label.findings),
    ...checkHoles(id, piece, machine),
    ...checkContours(id, features),
  );
  const part: Part = {
    id,
    jig: jig.id,
    title: `${jig.kind} ${jig.id}, ${piece.name.replaceAll('-', ' ')}`,
    copies: piece.copies,
    thickness: machine.sheet.thickness,
    material: machine.sheet.material,
    hand: jig.hand,
    features,
    sets: jig.seats.flatMap((seat) => seat.sets),
    ...(jig.drilling === undefined ? {} : { drills: jig.drilling.bores }),
  };
  return { value: part, findings };
}

/** mm. A scratch that can be read; common practice, no source. */
const ENGRAVE_DEPTH = 0.3;

/** A bore that is narrower than the router's tool is drilled with a bit of its own size. */
const drills = ({ radius }: CircleContour, machine: MachineProfile, purpose: Hole['purpose']): boolean =>
  machine.kind === 'router' &&
  (Math.abs(2 * radius - machine.kerf) <= AS_DRILLED || (purpose === 'bore' && 2 * radius < machine.kerf));

/** Holes that no tool of the router gets into. */
const checkHoles = (part: string, piece: Piece, machine: MachineProfile): readonly Finding[] =>
  machine.kind !== 'router'
    ? []
    : piece.holes.flatMap(({ contour, purpose }) => {
        if (
          purpose === 'bore' ||
          contour.kind !== 'circle' ||
          2 * contour.radius >= machine.kerf - AS_DRILLED
        )
          return [];
        const diameter = 2 * contour.radius;
        return [
          error(
            'parts/hole-under-tool',
            `A hole of ${mmText(diameter)} in ${part} is narrower than the tool of ${mmText(machine.kerf)}; use a narrower tool, or wider pins.`,
            {},
            { part, diameter, tool: machine.kerf },
          ),
        ];
      });

const checkContours = (part: string, features: readonly Feature[]): readonly Finding[] =>
  features
    .filter(({ operation }) => operation !== 'engrave')
    .flatMap(({ operation, contour }) =>
      contourProblems(contour).map((problem) =>
        error(
          'parts/outline',
          `the ${operation} contour of ${part} is faulty: ${problem}`,
          {},
          { part, operation },
        ),
      ),
    );

const notRelieved = (part: string, corner: Point, reason: string): Finding =>
  warning(
    'parts/not-relieved',
    `the inside corner of ${part} at ${corner.x.toFixed(2)}, ${corner.y.toFixed(2)} mm has no relief: ${reason}; square it by hand`,
    {},
    { part, x: corner.x, y: corner.y },
  );
