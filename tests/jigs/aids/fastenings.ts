import type { Corner, Fastening, Lean, ScrewPlace } from '../../../core/fastening/types.ts';
import { fitOrder } from '../../../core/fit/fit-order.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { readOrderCsv } from '../../../core/order/read-csv.ts';
import type { ShopStandard } from '../../../core/rules/types.ts';
import { readStandard } from '../../rules/read-standard.ts';

// Fastenings put together by hand: only what aids to drilling read of them.

export const STANDARD: ShopStandard = readStandard('face-frame-undermount.json');

/** Fits of rows `cabinet,column,drawer,qty,style,opening_w,opening_h,front_thickness`, lengths in inches. */
export function fitsOf(...lines: readonly string[]): readonly DrawerFit[] {
  const text = ['cabinet,column,drawer,qty,style,opening_w,opening_h,front_thickness', ...lines].join('\n');
  const order = readOrderCsv(text, { file: 'aids.csv', name: 'aids', unit: 'in', standard: STANDARD });
  return fitOrder(order.value, STANDARD).value;
}

export function oneFit(line = 'A,1,only,1,full overlay,18,8,'): DrawerFit {
  const [fit] = fitsOf(line);
  if (fit === undefined) throw new Error('no drawer');
  return fit;
}

/** mm from the lower edge of the box's sides to the upper face of its bottom, told apart from the code. */
export const FLOOR = STANDARD.box.bottom.raised.value + STANDARD.box.bottom.thickness.value;

/** mm. From the inside face of the box front to the tip. */
export const SCREW_LENGTH = 28.575;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** The box on the front as its fit has it, back view, mm: the cabinet's right is at the smaller x. */
export function boxOf({ frontW, boxW, boxH, overhang }: DrawerFit) {
  const right = overhang.right + (frontW - boxW - overhang.left - overhang.right) / 2;
  return { right, left: right + boxW, bottom: overhang.bottom, top: overhang.bottom + boxH };
}

export function placeAt(
  fit: DrawerFit,
  corner: Corner,
  {
    fromSide = 38.1,
    fromEnd = 31.75,
    lean = { side: 0, rail: 0 },
    index = 0,
    along = 'end',
  }: PlaceOptions = {},
): ScrewPlace {
  const box = boxOf(fit);
  const [outX, outY] = [corner.hand === 'right' ? -1 : 1, corner.end === 'bottom' ? -1 : 1];
  const inner = corner.hand === 'right' ? box.right + fit.boxSide : box.left - fit.boxSide;
  const edge = corner.end === 'bottom' ? box.bottom : box.top;
  const slope = { x: outX * Math.tan(radians(lean.side)), y: outY * Math.tan(radians(lean.rail)) };
  const length = Math.hypot(slope.x, slope.y, 1);
  const angle = (Math.acos(1 / length) * 180) / Math.PI;
  return {
    corner,
    index,
    along,
    entry: { x: inner - outX * fromSide, y: edge - outY * fromEnd },
    fromSide,
    fromEnd,
    lean,
    angle,
    smallestAngle: angle,
    direction: { x: slope.x / length, y: slope.y / length, z: -1 / length },
    wood: 'slab',
    pilotDepth: SCREW_LENGTH - fit.boxFront * length,
    margins: [],
    active: [],
  };
}

export interface PlaceOptions {
  readonly fromSide?: number;
  readonly fromEnd?: number;
  readonly lean?: Lean;
  readonly index?: number;
  readonly along?: ScrewPlace['along'];
}

export const CORNERS: readonly Corner[] = (['bottom', 'top'] as const).flatMap((end) =>
  (['left', 'right'] as const).map((hand) => ({ hand, end })),
);

/** A fastening of these places with a pilot drill of 7/64 in, unless told otherwise. */
export function fasteningOf(
  fit: DrawerFit,
  places: readonly ScrewPlace[],
  given: Partial<Pick<Fastening, 'pullHoles' | 'screw'>> & { readonly bit?: number } = {},
): Fastening {
  const [stock] = STANDARD.fastening.stock;
  if (stock === undefined) throw new Error('no screw in stock');
  return {
    fit,
    screw: given.screw ?? stock,
    places,
    impossible: [],
    holes: {
      plan: 'clearance in the box front',
      why: '',
      pilotDiameter: given.bit ?? (7 / 64) * 25.4,
      pilotTarget: 2.7,
      pilotDepth: SCREW_LENGTH - fit.boxFront,
      clearanceDiameter: 0,
    },
    withdrawal: { capacity: 0, pull: 0 },
    pullHoles: given.pullHoles ?? { diameter: 0, centers: [] },
    tightest: null,
  };
}
