import type { Outcome } from '../findings/finding.ts';
import { circle } from '../geometry/circle.ts';
import { polygon } from '../geometry/polygon.ts';
import { rectangle } from '../geometry/rectangle.ts';
import type { Point, RingContour } from '../geometry/types.ts';
import type { Hole, Jig, Label, Piece } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { partsOfJig } from '../parts/parts-of.ts';
import type { StrokeFont } from '../parts/stroke-font.ts';
import type { Part } from '../parts/types.ts';
import { mmText } from '../units/mm-text.ts';
import { allowanceText, couponSizes, MARGIN, type CouponSizes, type FitSeries } from './coupon-sizes.ts';

/**
 * The coupon of a machine as two parts of its sheet: a plate with a square hole, a row of holes for its pins and of
 * slots for a key from tight to loose, and a comb of thin teeth; and the key. All sizes are drawn as they should come
 * out. `date` is engraved as it is given.
 *
 *      ┌┐ ┌┐ ┌─┐ ┌──────────┐   comb: teeth 1.5 to 6 mm
 *      │└─┘└─┘ └─┘          │
 *      │ o  o  o  o  o  o   │   holes for the pin, each with its allowance
 *      │ ▯  ▯  ▯  ▯  ▯  ▯   │   slots for the key, likewise
 *      │ ┌──┐ material      │   the square that tells the kerf
 *      └─└──┘───────────────┘
 */
export function couponParts(
  machine: MachineProfile,
  font: StrokeFont,
  date?: string,
): Outcome<readonly Part[]> {
  const sizes = couponSizes(machine);
  const jig: Jig = {
    id: 'coupon',
    kind: 'calibration',
    hand: null,
    parameters: {},
    pieces: [plate(sizes, machine, date), ...(sizes.slots.allowances.length === 0 ? [] : [key(sizes)])],
    pins: [],
    seats: [],
    sensitivity: { kerf: 1, sheetThickness: 0, why: 'it is cut to tell the kerf' },
  };
  return partsOfJig(jig, machine, font);
}

function plate(sizes: CouponSizes, machine: MachineProfile, date: string | undefined): Piece {
  const { width, height, square, pins, slots, key: own, rows } = sizes;
  const { pinDiameter, sheet } = machine;
  const left = MARGIN + square + MARGIN;
  const words: Label = {
    phrases: [
      `${sheet.material}, ${mmText(sheet.thickness)}`,
      machine.name,
      ...(date === undefined ? [] : [date]),
      `x → ${mmText(width)}`,
      `y ↑ ${mmText(height)}`,
      `square ${mmText(square)}`,
      `kerf allowed for ${machine.compensation === 'file' ? mmText(machine.kerf) : 'by the machine'}`,
    ],
    center: { x: (left + width - MARGIN) / 2, y: MARGIN + square / 2 },
    width: width - MARGIN - left,
    height: square,
  };
  const holes: readonly Hole[] = [
    plain(rectangle(square, square, { x: MARGIN, y: MARGIN })),
    ...places(pins, rows.pin).map(({ at, allowance }): Hole => ({
      contour: circle(at, (pinDiameter + allowance) / 2),
      purpose: 'joint',
      seatCorners: [],
    })),
    ...places(slots, rows.slot).map(({ at, allowance }): Hole => {
      const [across, along] = [sheet.thickness + allowance, own.width + allowance];
      const slot = rectangle(across, along, { x: at.x - across / 2, y: at.y - along / 2 });
      return { contour: slot, purpose: 'joint', seatCorners: slot.vertices.map(({ x, y }) => ({ x, y })) };
    }),
  ];
  return {
    name: 'plate',
    copies: 1,
    outline: comb(sizes),
    holes,
    pockets: [],
    seatCorners: [],
    labels: [
      words,
      ...labels(pins, rows.pinLabel),
      ...labels(slots, rows.slotLabel),
      ...toothPlaces(sizes).map(({ from, tooth }): Label => ({
        phrases: [String(tooth)],
        center: { x: from + tooth / 2, y: rows.combLabel },
        width: tooth + sizes.gap - 1,
        height: 4,
      })),
    ],
  };
}

const key = ({ key: { width, length } }: CouponSizes): Piece => ({
  name: 'key',
  copies: 1,
  outline: rectangle(width, length),
  holes: [],
  pockets: [],
  seatCorners: [],
  labels: [
    {
      phrases: ['key', mmText(width)],
      center: { x: width / 2, y: length / 2 },
      width: length - 4,
      height: width - 3,
      angle: 90,
    },
  ],
});

const plain = (contour: RingContour): Hole => ({ contour, purpose: 'hang', seatCorners: [] });

const places = (
  { allowances, pitch }: FitSeries,
  y: number,
): readonly { readonly at: Point; readonly allowance: number }[] =>
  allowances.map((allowance, index) => ({ at: { x: MARGIN + (index + 0.5) * pitch, y }, allowance }));

const labels = (series: FitSeries, y: number): readonly Label[] =>
  places(series, y).map(({ at, allowance }) => ({
    phrases: [allowanceText(allowance)],
    center: at,
    width: series.pitch - 1.5,
    height: 4,
  }));

/** Where each tooth begins along the upper edge, mm; a gap lies before each and after the last. */
function toothPlaces({
  teeth,
  gap,
}: CouponSizes): readonly { readonly from: number; readonly tooth: number }[] {
  let from = MARGIN;
  return teeth.map((tooth) => {
    from += gap;
    const place = { from, tooth };
    from += tooth;
    return place;
  });
}

/** The plate's outline with the comb in its upper edge; the edge at its right is whole, to measure the height. */
function comb(sizes: CouponSizes): RingContour {
  const { width, height, gap, rows } = sizes;
  const floor = rows.combFloor;
  const gaps = [
    ...toothPlaces(sizes).map(({ from }) => from - gap),
    ...toothPlaces(sizes)
      .slice(-1)
      .map(({ from, tooth }) => from + tooth),
  ];
  const upper = gaps.flatMap((from): readonly Point[] => [
    { x: from, y: height },
    { x: from, y: floor },
    { x: from + gap, y: floor },
    { x: from + gap, y: height },
  ]);
  return polygon([
    { x: 0, y: 0 },
    { x: 0, y: height },
    ...upper,
    { x: width, y: height },
    { x: width, y: 0 },
  ]);
}
