import { Clipper, EndType, JoinType } from 'clipper2-ts';
import makerjs from 'makerjs';
import { writeDxf } from '../../core/files/dxf.ts';
import { makerModel } from '../../core/files/makerjs-model.ts';
import { difference } from '../../core/geometry/boolean.ts';
import { flatten } from '../../core/geometry/flatten.ts';
import { bounds } from '../../core/geometry/measure.ts';
import { offsetContour } from '../../core/geometry/offset.ts';
import { segmentsOf } from '../../core/geometry/segments.ts';
import type { RingContour } from '../../core/geometry/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { Part } from '../../core/parts/types.ts';
import { combOf648, plateOf40, tenHoles, twentySlots } from '../geometry/workpieces.ts';

/** mm. As fine as an offset flattens. */
const FLATNESS = 0.0005;
/** Grid steps in a mm, as coarse as the polygon library's whole numbers are used. */
const GRID = 1e6;

const elapsed = (run: () => void): number => {
  const begin = performance.now();
  run();
  return performance.now() - begin;
};

/** Median of 20 runs after 20 that warm up, ms. */
function median(run: () => void): number {
  for (let round = 0; round < 20; round += 1) run();
  const times = Array.from({ length: 20 }, () => elapsed(run));
  return times.toSorted((a, b) => a - b)[10] ?? Number.NaN;
}

const outlinesOf = (parts: readonly Part[]): readonly RingContour[] =>
  parts.flatMap(({ features }) =>
    features.flatMap(({ operation, contour }) =>
      operation === 'cut-outer' && contour.kind === 'ring' ? [contour] : [],
    ),
  );

/** Lines on our kerf offset beside makerjs's and a polygon library's, on the outlines of the same parts. */
export function* offsets(parts: readonly Part[], { kerf, layers }: MachineProfile): Generator<string> {
  const outlines = outlinesOf(parts);
  const by = kerf / 2;
  const ours = elapsed(() => outlines.forEach((outline) => offsetContour(outline, by)));
  let wrong = 0;
  const theirs = elapsed(() => {
    for (const outline of outlines) {
      const model = makerModel({ features: [{ operation: 'cut-outer', contour: outline }], layers });
      const grown = model.value === null ? null : makerjs.model.outline(model.value, by, 0);
      const extents = grown === null ? null : makerjs.measure.modelExtents(grown);
      const { min, max } = bounds(outline);
      const [width, height] = [max.x - min.x + kerf, max.y - min.y + kerf];
      const isRight =
        extents !== null &&
        Math.abs(extents.width - width) < 0.01 &&
        Math.abs(extents.height - height) < 0.01;
      if (!isRight) wrong += 1;
    }
  });
  const polygons = elapsed(() => {
    for (const outline of outlines) {
      const path = segmentsOf(outline)
        .flatMap((segment) => flatten(segment, FLATNESS))
        .map(({ x, y }) => ({ x: Math.round(x * GRID), y: Math.round(y * GRID) }));
      Clipper.inflatePaths([path], by * GRID, JoinType.Round, EndType.Polygon, 2, FLATNESS * GRID);
    }
  });
  yield `kerf offset of ${outlines.length} outlines of the demo order, ours = 1`;
  yield `  makerjs, outline          ${(theirs / ours).toFixed(2).padStart(8)}   ${wrong} of other extents than outline and kerf have`;
  yield `  polygons, no arcs kept    ${(polygons / ours).toFixed(2).padStart(8)}`;
}

/** Lines on our DXF beside the one that makerjs writes of the same drawing, its model included. */
export function* exports(parts: readonly Part[], machine: MachineProfile): Generator<string> {
  const ours = elapsed(() => {
    for (const { features } of parts) writeDxf({ features, layers: machine.layers }, machine.dxf);
  });
  const theirs = elapsed(() => {
    for (const { features } of parts) {
      const { value } = makerModel({ features, layers: machine.layers });
      if (value !== null) makerjs.exporter.toDXF(value, { usePOLYLINE: true });
    }
  });
  yield `DXF of ${parts.length} parts of the demo order, ours = 1`;
  yield `  makerjs, model and text   ${(theirs / ours).toFixed(2).padStart(8)}`;
}

/** Lines on requirement OFF-3, whose limits are milliseconds: medians of 20 runs. */
export function* limits(): Generator<string> {
  const [plate, comb] = [plateOf40(), combOf648()];
  const whole = median(() => {
    for (const contour of [plate, ...tenHoles]) offsetContour(contour, contour.kind === 'ring' ? 1 : -1);
  });
  const slots = median(() => difference([plate, ...tenHoles], twentySlots));
  const teeth = median(() => offsetContour(comb, 1));
  yield 'OFF-3, share of what is allowed (medians of 20)';
  yield `  offset, 40 segments and 10 holes, 25 ms    ${(whole / 25).toFixed(2).padStart(6)}`;
  yield `  difference with 20 slots, 10 ms            ${(slots / 10).toFixed(2).padStart(6)}`;
  yield `  offset, comb of 648 segments, 250 ms       ${(teeth / 250).toFixed(2).padStart(6)}`;
}
