import { CONTOUR_ERROR, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import { chainSize, type Chain, type Piece } from './chain.ts';
import { contourOf, looseLoops } from './loops.ts';
import { perimeter, signedArea } from './measure.ts';
import { meetingOf } from './meeting.ts';
import { advance, joinRuns, runsOf, type Run } from './runs.ts';
import { ringOf, type Segment } from './segments.ts';
import type { ClosedContour } from './types.ts';
import { angleOf, subtract } from './vector.ts';

/**
 * The exact contours that a chain stands for: its sides go back to the lines and circles they came from, and
 * neighbours meet where these meet. More than one where the chain touches itself. Null where that makes no sense,
 * or encloses another area than the chain: the caller then looks closer.
 */
export function rebuild(chain: Chain, pieces: readonly Piece[]): readonly ClosedContour[] | null {
  const segments = exactSegments(chain, pieces);
  if (segments === null) return null;
  const loops = looseLoops(segments);
  const rings = loops.map(ringOf); // circles too, for their direction
  const { area, length } = chainSize(chain);
  const exact = rings.reduce((total, ring) => total + signedArea(ring), 0);
  const around = rings.reduce((total, ring) => total + perimeter(ring), 0);
  return Math.abs(area - exact) <= CONTOUR_ERROR * Math.max(length, around) ? loops.map(contourOf) : null;
}

function exactSegments(chain: Chain, pieces: readonly Piece[]): readonly Segment[] | null {
  let runs = runsOf(chain, pieces);
  for (;;) {
    const current = runs;
    const [only] = current;
    if (only === undefined) return null;
    if (current.length === 1) return wholeTurn(only);
    const segments = current.map((run, index) => {
      const [before, after] = [current.at(index - 1), current[(index + 1) % current.length]];
      return before === undefined || after === undefined || isAuxiliary(run)
        ? null
        : exactSegment(before, run, after);
    });
    const weak = segments.indexOf(null);
    if (weak === -1) return segments.filter((segment) => segment !== null);
    const splinter = splinterNear(current, weak);
    if (splinter === null) return null;
    runs = joinRuns(current.filter((_, index) => index !== splinter));
  }
}

const isAuxiliary = (run: Run): boolean => run.pieces.every((piece) => piece.auxiliary);

/** mm. A run longer than this is no splinter: if it does not fit, the chain needs a finer look. */
const SPLINTER = 0.05;

/** The shortest of a run that does not fit and its two neighbours; null if none is a splinter. */
function splinterNear(runs: readonly Run[], weak: number): number | null {
  const near = [weak, (weak + 1) % runs.length, (weak + runs.length - 1) % runs.length];
  const candidates = near
    .flatMap((index) => {
      const run = runs[index];
      return run === undefined ? [] : [{ index, length: Math.abs(run.travel), own: index === weak }];
    })
    .filter(({ length }) => length <= SPLINTER)
    .sort((a, b) => a.length - b.length);
  const run = runs[weak];
  const doomed = run !== undefined && isAuxiliary(run);
  return (doomed ? candidates.find(({ own }) => own) : candidates[0])?.index ?? null;
}

/** A run that is all there is goes once round its circle, or it is nothing. */
function wholeTurn({ carrier, start, travel, pieces }: Run): readonly Segment[] | null {
  if (carrier.kind === 'line' || pieces.every((piece) => piece.auxiliary)) return null;
  const { center, radius } = carrier;
  const turns = travel / (2 * Math.PI * radius);
  if (Math.abs(Math.abs(turns) - 1) > 0.01) return null;
  const startAngle = angleOf(subtract(start, center));
  return [
    { kind: 'arc', start, end: start, center, radius, startAngle, sweep: Math.sign(turns) * 2 * Math.PI },
  ];
}

/** The exact segment of a run between its neighbours; null if it would turn back, or be too short to export. */
function exactSegment(before: Run, run: Run, after: Run): Segment | null {
  const [start, end] = [meetingOf(before, run), meetingOf(run, after)];
  if (start === null || end === null) return null;
  const { carrier } = run;
  const travel = advance(carrier, start, run.start) + run.travel + advance(carrier, run.end, end);
  if (travel * Math.sign(run.travel) < SHORTEST_SEGMENT) return null;
  if (carrier.kind === 'line') return { kind: 'line', start, end };
  const { center, radius } = carrier;
  const sweep = travel / radius;
  // A whole turn from the tangent point of two circles comes out a last digit more or less.
  if (Math.abs(sweep) > 2 * Math.PI + 1e-9) return null;
  return { kind: 'arc', start, end, center, radius, startAngle: angleOf(subtract(start, center)), sweep };
}
