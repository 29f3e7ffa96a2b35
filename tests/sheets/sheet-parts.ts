import { polygon } from '../../core/geometry/polygon.ts';
import { rectangle } from '../../core/geometry/rectangle.ts';
import { circle } from '../../core/geometry/circle.ts';
import type { ClosedContour } from '../../core/geometry/types.ts';
import { cornerFence } from '../../core/jigs/kinds/corner-fence.ts';
import { stepProfile } from '../../core/jigs/kinds/step-profile.ts';
import { partsOf } from '../../core/parts/parts-of.ts';
import type { Feature, Part } from '../../core/parts/types.ts';
import { placedFeatures } from '../../core/sheets/placed-features.ts';
import type { Sheet, SheetOptions, StockSheet } from '../../core/sheets/types.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { sampled } from '../geometry/reference.ts';
import { contextOf, setup } from '../jigs/setups.ts';
import type { Outline } from './layout-faults.ts';

/** A part of 6 mm plywood with this outline. */
export const partOf = (id: string, outline: ClosedContour, given: Partial<Part> = {}): Part => ({
  id,
  jig: 'J1',
  title: id,
  copies: 1,
  thickness: 6,
  material: 'plywood',
  hand: null,
  features: [{ operation: 'cut-outer', contour: outline }],
  sets: [],
  ...given,
});

/** An L of 120 x 120 with arms 40 wide, a hole in its corner and a stroke of engraving, drawn off the origin. */
export const ell = (id: string, copies: number): Part => {
  const features: readonly Feature[] = [
    { operation: 'cut-outer', contour: ellOutline },
    { operation: 'cut-inner', contour: circle({ x: 0, y: 0 }, 5) },
    {
      operation: 'engrave',
      contour: {
        kind: 'path',
        vertices: [
          { x: 20, y: -5, bulge: 0 },
          { x: 60, y: -5, bulge: 0 },
          { x: 60, y: 5, bulge: 0 },
        ],
      },
    },
  ];
  return partOf(id, ellOutline, { copies, features });
};

const ellOutline = polygon([
  { x: -20, y: -20 },
  { x: 100, y: -20 },
  { x: 100, y: 20 },
  { x: 20, y: 20 },
  { x: 20, y: 100 },
  { x: -20, y: 100 },
]);

export const bar = (id: string, width: number, height: number, given: Partial<Part> = {}): Part =>
  partOf(id, rectangle(width, height), given);

export const stockSheet = (given: Partial<StockSheet> = {}): StockSheet => ({
  name: 'whole sheet',
  width: 600,
  height: 400,
  count: null,
  offcut: false,
  material: 'plywood',
  thickness: 6,
  ...given,
});

export const sheetOptions = (given: Partial<SheetOptions> = {}): SheetOptions => ({
  edgeMargin: 10,
  spacing: 6,
  kerf: 0.2,
  turn: 'quarter',
  keepUpright: [],
  seed: 1,
  effort: 200,
  ...given,
});

const context = contextOf('laser-6');

/** Parts of a pair of real corner fences and of real step profiles, as the chain makes them. */
export const realParts: readonly Part[] = partsOf(
  [
    ...(['left', 'right'] as const).map((edge, index) =>
      cornerFence.build(
        `C${index + 1}`,
        [setup({ overhang: 22 }), setup({ edge, edgeLength: 300, overhang: 19 })],
        context,
      ),
    ),
    ...[8, 19.05, 33].map((overhang, index) =>
      stepProfile.build(`S${index + 1}`, [setup({ edge: 'left', overhang })], context),
    ),
  ],
  context.machine,
  STROKE_FONT,
).value;

/** The outlines of a sheet in straight sides, for the judge. */
export const outlinesOf = (sheet: Sheet): readonly Outline[] =>
  sheet.placed.flatMap((placed) =>
    placedFeatures(placed).flatMap(({ operation, contour }) =>
      operation === 'cut-outer' && contour.kind !== 'path'
        ? [{ name: `${placed.part.id} ${placed.copy}`, points: sampled(contour, 0.001) }]
        : [],
    ),
  );
