import type { ScrewPlace, Wood } from '../fastening/types.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Edge } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { backInset } from '../scene/front-solid.ts';
import { sameLength } from '../units/tolerances.ts';
import { fromEdge } from './from-edge.ts';
import type { SectionPoint, SectionShape } from './types.ts';

/** A stretch along a section, mm from the edge inwards. */
type Stretch = readonly [number, number];

/**
 * What a plane across an edge, through the middle of a screw's head, cuts: the front with its panel and groove,
 * and the box. Drawn as far inwards and as far up as `reach`.
 */
export function backdrop(
  place: ScrewPlace,
  edge: Edge,
  { fit, standard, woods }: BackdropOf,
  reach: { readonly in: number; readonly up: number },
): readonly SectionShape[] {
  return [
    ...frontShapes(place, edge, { fit, standard, woods }, reach.in),
    ...boxShapes(edge, fit, standard, reach),
  ];
}

export interface BackdropOf {
  readonly fit: DrawerFit;
  readonly standard: ShopStandard;
  /** The wood of the front in which screws may be. */
  readonly woods: readonly Wood[];
}

function frontShapes(
  place: ScrewPlace,
  edge: Edge,
  { fit, standard, woods }: BackdropOf,
  reach: number,
): readonly SectionShape[] {
  const { groove } = standard.front;
  const back = -fit.frontThickness;
  const setback = backInset(fit);
  const solid = woods
    .flatMap((wood) => {
      const stretch = cutThrough(wood, place, edge, fit);
      return stretch === null || stretch[0] >= reach ? [] : [{ wood, stretch }];
    })
    .toSorted((a, b) => a.stretch[0] - b.stretch[0]);
  const shapes = solid.map(({ wood, stretch: [from, to] }): SectionShape => {
    // Woods are told as their back has them; at a bevelled edge the face reaches farther out.
    const bevel = sameLength(from, setback) ? setback : 0;
    return {
      id: `wood ${wood.name}`,
      material: 'front',
      outline: [
        { in: from - bevel, up: back },
        { in: Math.min(to, reach), up: back },
        { in: Math.min(to, reach), up: 0 },
        { in: from, up: 0 },
      ],
    };
  });
  const end = Math.max(...solid.map(({ stretch }) => stretch[1]));
  if (fit.drawer.front.kind === 'slab' || end >= reach) return shapes;
  const [from, to] = [-groove.behind.value, -groove.behind.value - groove.width.value];
  return [
    ...shapes,
    {
      id: 'groove',
      material: 'groove',
      outline: block([end - groove.depth.value, end], [to, from]),
    },
    {
      id: 'panel',
      material: 'panel',
      // The panel ends short of the groove's ground: it needs room to move.
      outline: block([end - groove.depth.value / 2, reach], [to, from]),
    },
  ];
}

function boxShapes(
  edge: Edge,
  fit: DrawerFit,
  { box }: ShopStandard,
  reach: { readonly in: number; readonly up: number },
): readonly SectionShape[] {
  const from = fit.overhang[edge];
  const side = edge === 'left' || edge === 'right';
  const inside = side ? from + fit.boxSide : from;
  const shapes: SectionShape[] = [
    {
      id: 'box front',
      material: 'box front',
      outline: block([inside, reach.in], [0, fit.boxFront]),
    },
  ];
  if (side) {
    shapes.push({
      id: 'box side',
      material: 'box side',
      outline: block([from, inside], [0, reach.up]),
    });
  }
  if (edge === 'bottom') {
    const { raised, thickness } = box.bottom;
    shapes.push({
      id: 'box bottom',
      material: 'box bottom',
      outline: block([from + raised.value, from + raised.value + thickness.value], [fit.boxFront, reach.up]),
    });
  }
  return shapes;
}

/** The stretch of a convex outline that the section's plane cuts; null where it misses. */
function cutThrough({ outline }: Wood, place: ScrewPlace, edge: Edge, fit: DrawerFit): Stretch | null {
  const level = edge === 'left' || edge === 'right';
  const at = level ? place.entry.y : place.entry.x;
  const ends = outline.flatMap((a, index): readonly number[] => {
    const b = outline[(index + 1) % outline.length] ?? a;
    const [from, to] = level ? [a.y, b.y] : [a.x, b.x];
    if (Math.min(from, to) > at || Math.max(from, to) < at || from === to) return [];
    const share = (at - from) / (to - from);
    return [fromEdge({ x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }, edge, fit)];
  });
  return ends.length < 2 ? null : [Math.min(...ends), Math.max(...ends)];
}

const block = ([left, right]: Stretch, [low, high]: Stretch): readonly SectionPoint[] => [
  { in: left, up: low },
  { in: right, up: low },
  { in: right, up: high },
  { in: left, up: high },
];
