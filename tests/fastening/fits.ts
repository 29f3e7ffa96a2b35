import { resolveRules } from '../../core/rules/resolve.ts';
import type { FasteningRule, StockScrew } from '../../core/rules/fastening-types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { Drawer } from '../../core/order/types.ts';
import { readStandard } from '../rules/read-standard.ts';

export const STANDARD = readStandard('face-frame-undermount.json');

export const INCH = 25.4;

const DRAWER: Drawer = {
  row: 2,
  cabinet: 'B1',
  column: 1,
  position: 'middle',
  first: true,
  last: true,
  drawer: 'middle',
  qty: 1,
  style: 'full overlay',
  openingW: 400,
  openingH: 200,
  edges: {},
  front: { kind: 'slab' },
};

const RULES = resolved();

function resolved(): DrawerFit['rules'] {
  const { value } = resolveRules(DRAWER, STANDARD, 1);
  if (value === null) throw new Error('the standard does not resolve');
  return value;
}

type Given = Partial<Omit<DrawerFit, 'drawer'>> & {
  readonly drawer?: Partial<Drawer>;
  /** Degrees. */
  readonly bevel?: number;
};

/** A drawer whose box stands 36.5125 mm (1-7/16 in) from both sides and 50.8 mm from the bottom, but for what is given. */
export function fitWith({ drawer, bevel = 0, ...given }: Given = {}): DrawerFit {
  const overhang = given.overhang ?? { left: 36.5125, right: 36.5125, bottom: 50.8, top: 44.45 };
  const boxW = given.boxW ?? 300;
  const boxH = given.boxH ?? 150;
  return {
    unit: 'in',
    frontThickness: 19.05,
    boxSide: 15.875,
    boxFront: 15.875,
    runningClearance: 4.7625,
    gaps: { left: null, right: null, top: null, bottom: null },
    ...given,
    rules: { ...RULES, backBevel: { value: bevel, source: 'test' } },
    drawer: { ...DRAWER, ...drawer },
    overhang,
    boxW,
    boxH,
    frontW: overhang.left + boxW + overhang.right,
    frontH: overhang.bottom + boxH + overhang.top,
  };
}

/** The standard with some of its fastening rule replaced by what is given. */
export const standardWith = (given: Partial<FasteningRule>, of: ShopStandard = STANDARD): ShopStandard => ({
  ...of,
  fastening: { ...of.fastening, ...given },
});

export const mm = (value: number) => ({ value, source: 'test' });

/** A screw of the stock by its name. */
export function stockScrew(name: string): StockScrew {
  const found = STANDARD.fastening.stock.find((screw) => screw.name === name);
  if (found === undefined) throw new Error(`no screw ${name}`);
  return found;
}

/** Numbers from 0 to 1 that are the same for the same seed (mulberry32). */
export function random(seed: number): (low?: number, high?: number) => number {
  let state = seed >>> 0;
  return (low = 0, high = 1) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return low + (((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * (high - low);
  };
}
