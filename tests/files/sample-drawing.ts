import sans from '../../assets/stroke-font/sans.json' with { type: 'json' };
import type { Drawing, DxfSettings } from '../../core/files/drawing.ts';
import type { Contour, PathContour, RingContour, Vertex } from '../../core/geometry/types.ts';
import type { LayerStyle } from '../../core/machine/profile.ts';
import { parseStrokeFont } from '../../core/parts/parse-stroke-font.ts';
import { strokeText } from '../../core/parts/stroke-text.ts';
import type { Operation } from '../../core/machine/operations.ts';
import type { Feature } from '../../core/parts/types.ts';

export const FONT = parseStrokeFont(sans);

const style = (name: string, colorIndex: number, color: string): LayerStyle => ({ name, colorIndex, color });

export const LAYERS: Readonly<Record<Operation, LayerStyle>> = {
  engrave: style('ENGRAVE', 5, '#0000ff'),
  drill: style('DRILL', 3, '#00c000'),
  pocket: style('POCKET-2', 4, '#00c0c0'),
  'cut-inner': style('CUT_INNER', 6, '#c000c0'),
  tab: style('TABS', 2, '#b08a00'),
  'cut-outer': style('CUT_OUTER', 1, '#ff0000'),
};

export const SETTINGS: DxfSettings = {
  version: 'R12',
  unit: 'mm',
  repeatFirstPoint: false,
  arcsAsLines: false,
};

/** Both versions, both units, both switches: 16 settings. */
export const ALL_SETTINGS: readonly DxfSettings[] = (['R12', 'R2000'] as const).flatMap((version) =>
  (['mm', 'in'] as const).flatMap((unit) =>
    [false, true].flatMap((repeatFirstPoint) =>
      [false, true].map((arcsAsLines) => ({ version, unit, repeatFirstPoint, arcsAsLines })),
    ),
  ),
);

/** x, y and, of an arc, the bulge. */
export type Corner = readonly [x: number, y: number, bulge?: number];

export const vertices = (...given: readonly Corner[]): readonly Vertex[] =>
  given.map(([x, y, bulge = 0]) => ({ x, y, bulge }));

export const ring = (...given: readonly Corner[]): RingContour => ({
  kind: 'ring',
  vertices: vertices(...given),
});

export const path = (...given: readonly Corner[]): PathContour => ({
  kind: 'path',
  vertices: vertices(...given),
});

export const circle = (x: number, y: number, radius: number): Contour => ({
  kind: 'circle',
  center: { x, y },
  radius,
});

export const feature = (operation: Operation, contour: Contour): Feature => ({ operation, contour });

export const drawingOf = (...features: readonly Feature[]): Drawing => ({ layers: LAYERS, features });

/** Quarter circle: tan(90° / 4). */
const QUARTER = Math.SQRT2 - 1;

/** A plate that has one of everything, drawn left of and below the origin too, outline first. */
export const PLATE: Drawing = drawingOf(
  feature('cut-outer', ring([-20, -10], [80, -10, QUARTER], [90, 0], [90, 40, 1], [60, 40], [-20, 40, -0.2])),
  feature('cut-inner', ring([0, 0], [30, 0, 1], [30, 6.35], [0, 6.35, 1])),
  feature('pocket', ring([40, 2], [55, 2], [55, 12], [40, 12])),
  feature('drill', circle(75, 20, 1.5875)),
  feature('cut-inner', circle(5, 25, 3.175)),
  ...strokeText(FONT, 'LEFT 1 7/16" Ø6', {
    capHeight: 4,
    at: { x: 0, y: 15 },
    align: 'left',
  }).value.contours.map((contour) => feature('engrave', contour)),
);
