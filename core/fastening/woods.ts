import type { DrawerFit } from '../fit/types.ts';
import type { Point } from '../geometry/types.ts';
import { frameWidths } from '../order/frame-widths.ts';
import { tanDegrees } from '../units/angle.ts';
import type { Corner, Wood } from './types.ts';

/** One side of a wood's outline. */
export interface WoodEdge {
  /** Counter-clockwise: the wood is at the left of the way from here to there. */
  readonly from: Point;
  readonly to: Point;
  readonly limit: 'wood' | 'joint line';
  /** In words: `the inner edge of the right stile`. */
  readonly against: string;
  /** The panel's groove runs along it. */
  readonly groove: boolean;
}

export interface EdgedWood extends Wood {
  readonly edges: readonly WoodEdge[];
}

type Side = 'outer' | 'inner' | 'end' | 'joint';

/**
 * The pieces of wood of a front, back view, mm. A slab is one. A five-piece front has four: with a cope the
 * stiles run the whole height and the rails stand between them; with a mitre all four are trapezoids.
 * Where the edges are bevelled, the outline is that of the back, which is the smaller one.
 */
export function woodsOf(fit: DrawerFit): readonly EdgedWood[] {
  const { frontW: w, frontH: h, frontThickness, rules, drawer } = fit;
  const { front } = drawer;
  const i = frontThickness * tanDegrees(rules.backBevel.value);
  const at = (x: number, y: number): Point => ({ x, y });
  if (front.kind === 'slab') {
    const corners = [at(i, i), at(w - i, i), at(w - i, h - i), at(i, h - i)];
    return [wood('slab', corners, ['outer', 'outer', 'outer', 'outer'])];
  }
  const { stile: m, rail: r } = frameWidths(front);
  if (front.joint === 'mitre') {
    // Where the mitre meets the outline of the back; the inner one of two lines where the widths differ.
    const [x, y] = [Math.max(i, (i * m) / r), Math.max(i, (i * r) / m)];
    return [
      wood('right stile', [at(i, y), at(m, r), at(m, h - r), at(i, h - y)], MITRED),
      wood('left stile', [at(w - i, h - y), at(w - m, h - r), at(w - m, r), at(w - i, y)], MITRED),
      wood('bottom rail', [at(x, i), at(w - x, i), at(w - m, r), at(m, r)], RAIL),
      wood('top rail', [at(w - x, h - i), at(x, h - i), at(m, h - r), at(w - m, h - r)], RAIL),
    ];
  }
  return [
    wood('right stile', [at(i, i), at(m, i), at(m, h - i), at(i, h - i)], STILE),
    wood('left stile', [at(w - i, h - i), at(w - m, h - i), at(w - m, i), at(w - i, i)], STILE),
    wood('bottom rail', [at(m, i), at(w - m, i), at(w - m, r), at(m, r)], RAIL),
    wood('top rail', [at(w - m, h - i), at(m, h - i), at(m, h - r), at(w - m, h - r)], RAIL),
  ];
}

const RAIL: readonly Side[] = ['outer', 'joint', 'inner', 'joint'];
const STILE: readonly Side[] = ['end', 'inner', 'end', 'outer'];
const MITRED: readonly Side[] = ['joint', 'inner', 'joint', 'outer'];

function wood(name: Wood['name'], outline: readonly Point[], sides: readonly Side[]): EdgedWood {
  const edges = outline.map((from, index): WoodEdge => {
    const to = outline[(index + 1) % outline.length] ?? from;
    const side = sides[index] ?? 'outer';
    return {
      from,
      to,
      limit: side === 'joint' ? 'joint line' : 'wood',
      against: wordsOf(name, side),
      groove: side === 'inner',
    };
  });
  return { name, outline, edges };
}

/** Without the hand, so that the same corner of either hand is the same problem. */
const wordsOf = (name: Wood['name'], side: Side): string => {
  if (name === 'slab') return 'the edge of the front';
  const member = memberOf(name);
  if (side === 'joint') return `the joint at the end of the ${member}`;
  return side === 'end' ? `the end of the ${member}` : `the ${side} edge of the ${member}`;
};

/** What a wood is, whichever side or end it is at. */
export type Member = 'slab' | 'stile' | 'rail';

export const memberOf = (name: Wood['name']): Member =>
  name === 'slab' ? 'slab' : name.endsWith('stile') ? 'stile' : 'rail';

/** The wood of a sort that is at a corner. */
export const woodAt = (member: Member, { hand, end }: Corner): Wood['name'] =>
  member === 'slab' ? 'slab' : member === 'stile' ? `${hand} stile` : `${end} rail`;
