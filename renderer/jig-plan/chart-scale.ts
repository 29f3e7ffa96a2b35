import type { Bargain } from '../../core/jigs/sharing/picked-point.ts';

/** Of the drawing, in its own units; room at the left and below for numbers. */
const SIZE = { width: 640, height: 280, left: 24, right: 24, top: 28, bottom: 34 } as const;

/** Numbers below the axis that stand nearer than this are left out. */
const APART = 26;

export interface ChartScale {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly axes: string;
  /** The line from bargain to bargain: so much is left to adjust until one more jig is made. */
  readonly stairs: string;
  readonly place: (bargain: Bargain) => {
    readonly x: number;
    readonly y: number;
    readonly isLabelled: boolean;
  };
}

/** Where the bargains are drawn: by count from left to right, by adjustment upwards from 0. */
export function chartScale(offered: readonly Bargain[]): ChartScale {
  const { width, height, left, right, top, bottom } = SIZE;
  const counts = offered.map(({ jigs }) => jigs);
  const [first, last] = [Math.min(...counts), Math.max(...counts)];
  const most = Math.max(...offered.map(({ total }) => total));
  const floor = height - bottom;
  const xOf = ({ jigs }: Bargain): number =>
    last === first ? width / 2 : left + ((width - left - right) * (jigs - first)) / (last - first);
  const yOf = ({ total }: Bargain): number => (most === 0 ? floor : floor - ((floor - top) * total) / most);
  const labelled = new Set<Bargain>();
  let free = Infinity;
  for (const bargain of offered.toReversed()) {
    if (xOf(bargain) > free - APART) continue;
    labelled.add(bargain);
    free = xOf(bargain);
  }
  const steps = offered.map(
    (bargain, place) => `${place === 0 ? 'M' : 'H'}${xOf(bargain)}${place === 0 ? ' ' : ' V'}${yOf(bargain)}`,
  );
  return {
    width,
    height,
    left,
    axes: `M${left} ${top}V${floor}H${width - right}`,
    stairs: steps.join(''),
    place: (bargain) => ({ x: xOf(bargain), y: yOf(bargain), isLabelled: labelled.has(bargain) }),
  };
}
