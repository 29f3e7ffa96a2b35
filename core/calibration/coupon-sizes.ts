import type { MachineProfile } from '../machine/profile.ts';
import { roundTo, SAME_LENGTH } from '../units/tolerances.ts';

/** Something that is cut several times, tighter and looser. Lengths in mm. */
export interface FitSeries {
  /** Added to the size of what goes in, one for each; empty where no tool gets in. */
  readonly allowances: readonly number[];
  /** From the middle of one to that of the next. */
  readonly pitch: number;
}

/** The sizes of a machine's coupon, mm; all are common practice, no source. */
export interface CouponSizes {
  readonly width: number;
  readonly height: number;
  /** Side of the square hole: the piece that falls out keeps 20 mm at least. */
  readonly square: number;
  /** Widths of the comb's teeth, and of the gaps between them. */
  readonly teeth: readonly number[];
  readonly gap: number;
  readonly pins: FitSeries;
  readonly slots: FitSeries;
  readonly key: { readonly width: number; readonly length: number };
  /** From the plate's lower edge: middles of rows and of their labels, and the floor of the comb. */
  readonly rows: {
    readonly slotLabel: number;
    readonly slot: number;
    readonly pinLabel: number;
    readonly pin: number;
    readonly combLabel: number;
    readonly combFloor: number;
  };
}

const ALLOWANCES = [-0.1, -0.05, 0, 0.05, 0.1, 0.15, 0.2, 0.3];

/** Short enough for a caliper of 150 mm. */
const WIDTH = 140;

const LEAST_PIECE = 20;
const LEAST_PITCH = 14;
const LABEL_HEIGHT = 5;
const TOOTH_LENGTH = 10;

/** Land between two holes, for whatever is on the spindle. */
const land = (kerf: number): number => Math.max(6, roundTo(1.6 * kerf, 1));

/** The coupon of a machine: what its tool can cut, at sizes that its joints have. */
export function couponSizes({ kind, kerf, pinDiameter, sheet }: MachineProfile): CouponSizes {
  const router = kind === 'router';
  const key = { width: Math.max(10, Math.ceil(2.5 * kerf)), length: 40 };
  // A tool that just fits leaves a drilled hole; a wider one leaves none.
  const pins = series(pinDiameter, kerf, (size) => !router || size >= kerf - SAME_LENGTH);
  const slots = series(sheet.thickness, kerf, (size) => !router || size >= kerf + 0.5);
  const square = roundTo(LEAST_PIECE + 2 * kerf, 2);

  const slotLabel = MARGIN + square + 2 + LABEL_HEIGHT;
  const slot = slotLabel + LABEL_HEIGHT + (key.width + kerf) / 2;
  const pinLabel = slot + (key.width + kerf) / 2 + LABEL_HEIGHT;
  const pin = pinLabel + LABEL_HEIGHT + pinDiameter / 2;
  const combLabel = pin + pinDiameter / 2 + 2 + LABEL_HEIGHT;
  const combFloor = combLabel + LABEL_HEIGHT;
  return {
    width: Math.ceil(Math.max(WIDTH, rowWidth(pins), rowWidth(slots))),
    height: Math.ceil(combFloor + TOOTH_LENGTH),
    square,
    teeth: [1.5, 2, 3, 4, 6],
    gap: Math.max(6, roundTo(1.3 * kerf, 1)),
    pins,
    slots,
    key,
    rows: { slotLabel, slot, pinLabel, pin, combLabel, combFloor },
  };
}

/** mm. From the plate's edges to what is cut in it. */
export const MARGIN = 8;

const rowWidth = ({ allowances, pitch }: FitSeries): number => allowances.length * pitch + 2 * MARGIN;

/** All allowances that a tool can cut; every other one where all of them would not lie on the plate. */
function series(size: number, kerf: number, isCut: (size: number) => boolean): FitSeries {
  const pitch = Math.max(LEAST_PITCH, size + land(kerf));
  const cut = ALLOWANCES.filter((allowance) => isCut(size + allowance));
  const all = { allowances: cut, pitch };
  return rowWidth(all) <= WIDTH ? all : { allowances: cut.filter((_, index) => index % 2 === 0), pitch };
}

/** `+0.15`, as it is engraved: the sign tells that it is an allowance. */
export const allowanceText = (allowance: number): string =>
  `${allowance < 0 ? '-' : '+'}${Math.abs(allowance).toFixed(2)}`;
