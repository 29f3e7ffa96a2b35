/** What somebody measures on a cut coupon. Lengths in mm. */
export interface CouponMeasured {
  /** The square hole, across. */
  readonly hole: number;
  /** The square piece that fell out of it, across the same way. */
  readonly piece: number;
  /** Allowance engraved at the tightest hole that a pin goes into by hand; null where there are no pins. */
  readonly pin: number | null;
  /** Allowance engraved at the tightest slot that the key goes into by hand; null where there are no slots. */
  readonly slot: number | null;
  /** The plate along x and along y, as the files have them. */
  readonly width: number;
  readonly height: number;
}

/** What a coupon tells of the machine that cut it. */
export interface CouponReading {
  /** mm. Full width of the cut. */
  readonly kerf: number;
  /** mm. Null: not read, the profile's own stays. */
  readonly fit: { readonly pin: number | null; readonly slot: number | null };
  /** What the machine makes of 1 mm; 1 is true. */
  readonly scaleX: number;
  readonly scaleY: number;
}
