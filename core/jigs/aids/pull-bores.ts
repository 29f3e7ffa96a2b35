import { circle } from '../../geometry/circle.ts';
import type { Bore, Hole } from '../types.ts';
import type { TemplateSetup } from './types.ts';

/** The holes of a plate whose lips meet the edges this far inside the face's outline, mm. */
export const pullBores = ({ holes, bore, at }: TemplateSetup, setback: number): readonly Hole[] =>
  holes.map(({ x, y }) => ({
    contour: circle({ x: at === 'middle' ? x : x - setback, y: y - setback }, bore / 2),
    purpose: 'bore',
    seatCorners: [],
  }));

/** The bores of a template that is one sheet of this thickness (mm) over the front. */
export const pullDrilling = ({ holes, bit, bore }: TemplateSetup, thickness: number): readonly Bore[] =>
  holes.map((at) => ({
    at,
    slope: { x: 0, y: 0 },
    angle: 0,
    diameter: bore,
    bit,
    shift: { x: 0, y: 0 },
    guided: thickness,
    step: 0,
    edgeGap: 0,
    play: (bore - bit) / 2,
    tilt: (Math.atan((bore - bit) / thickness) * 180) / Math.PI,
    depth: null,
    stop: null,
  }));
