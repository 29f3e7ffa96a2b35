import type { DrawerFit } from '../fit/types.ts';
import { frameWidths } from '../order/frame-widths.ts';
import type { FrontConstruction } from '../order/types.ts';
import type { StockScrew } from '../rules/fastening-types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { INCH } from '../units/inch-fraction.ts';
import type { DrawerContext } from './drawer-context.ts';

/** A drawer and a screw with one thing changed. */
interface Changed {
  readonly fit: DrawerFit;
  readonly standard: ShopStandard;
  readonly guideThickness: number;
  readonly screw: StockScrew;
}

/** One thing that a shop can change, in steps. */
export interface Change {
  /** Steps that are worth a try. */
  readonly most: number;
  /** More of it is never worse than less. */
  readonly monotone: boolean;
  /** The drawer with so many steps of it; null where there is no such thing. */
  readonly make: (steps: number) => Changed | null;
  /** The cure in a sentence. */
  readonly say: (steps: number, length: (mm: number) => string) => string;
}

/** mm. Steps in which people choose a screw's length, and other lengths; common practice, no source. */
const STEPS = {
  in: { screw: INCH / 8, size: INCH / 16 },
  mm: { screw: 5, size: 1 },
} as const;

/** mm. No shop has a screw or a driver smaller than this. */
const SHORTEST_SCREW = 10;
const THINNEST_DRIVER = 3;

/** What might cure a place, in the order in which it is easy. */
export function changesOf(context: DrawerContext, screw: StockScrew): readonly Change[] {
  const { fit, standard, guideThickness } = context;
  const now: Changed = { fit, standard, guideThickness, screw };
  const step = STEPS[fit.unit];
  const resize = (steps: number): Changed | null => {
    const length = screw.length.value + steps * step.screw;
    if (length < SHORTEST_SCREW) return null;
    const thread = Math.min(length, screw.thread.value + (steps > 0 ? steps * step.screw : 0));
    return {
      ...now,
      screw: {
        ...screw,
        length: { ...screw.length, value: length },
        thread: { ...screw.thread, value: thread },
      },
    };
  };
  const sayScrew =
    (sign: 1 | -1): Change['say'] =>
    (steps, length) =>
      `A screw of ${length(screw.length.value + sign * steps * step.screw)} in place of ${length(screw.length.value)} would do.`;
  return [
    { most: 8, monotone: false, make: (steps) => resize(-steps), say: sayScrew(-1) },
    { most: 8, monotone: false, make: resize, say: sayScrew(1) },
    {
      most: 8,
      monotone: true,
      make: (steps) => ({ ...now, guideThickness: guideThickness + steps * 2 * step.size }),
      say: (steps, length) =>
        `A drill guide ${length(guideThickness + steps * 2 * step.size)} thick would do, in place of one of ${length(guideThickness)}.`,
    },
    thinnerDriver(now),
    ...(['stile', 'rail'] as const).map((member): Change => ({
      most: 24,
      monotone: true,
      make: (steps) => {
        const front = widen(fit.drawer.front, member, steps * step.size);
        return front === null ? null : { ...now, fit: { ...fit, drawer: { ...fit.drawer, front } } };
      },
      say: (steps, length) => `A ${member} ${length(steps * step.size)} wider would do.`,
    })),
    {
      most: 8,
      monotone: true,
      make: (steps) => ({ ...now, fit: { ...fit, frontThickness: fit.frontThickness + steps * step.size } }),
      say: (steps, length) =>
        `A front ${length(fit.frontThickness + steps * step.size)} thick would do, in place of ${length(fit.frontThickness)}.`,
    },
    {
      most: 8,
      monotone: false,
      make: (steps) => {
        const boxSide = fit.boxSide - steps * step.size;
        return boxSide < 6 ? null : { ...now, fit: { ...fit, boxSide } };
      },
      say: (steps, length) =>
        `Box sides ${length(fit.boxSide - steps * step.size)} thick would do, in place of ${length(fit.boxSide)}.`,
    },
  ];
}

/** A driver none of whose parts is wider than so much, from its widest down. */
function thinnerDriver(now: Changed): Change {
  const { driver } = now.standard.fastening;
  const widest = Math.max(0, ...driver.map(({ radius }) => radius.value));
  const radiusAt = (steps: number): number => widest - steps;
  return {
    most: Math.max(0, Math.floor(widest - THINNEST_DRIVER)),
    monotone: true,
    make: (steps) => ({
      ...now,
      standard: {
        ...now.standard,
        fastening: {
          ...now.standard.fastening,
          driver: driver.map((part) => ({
            ...part,
            radius: { ...part.radius, value: Math.min(part.radius.value, radiusAt(steps)) },
          })),
        },
      },
    }),
    say: (steps, length) =>
      `A driver no wider than ${length(2 * radiusAt(steps))} would do, in place of one of ${length(2 * widest)}.`,
  };
}

/** A five-piece front with a wider stile or rail; null for a slab. */
function widen(front: FrontConstruction, member: 'stile' | 'rail', by: number): FrontConstruction | null {
  if (front.kind === 'slab') return null;
  const { stile, rail } = frameWidths(front);
  return member === 'stile'
    ? { ...front, railWidth: rail, memberWidth: stile + by }
    : { ...front, railWidth: rail + by };
}
