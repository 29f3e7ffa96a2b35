import { placedFront, type PlacedDrawer } from '../fit/layout.ts';
import type { Placed } from '../fit/types.ts';
import { EDGES, type Edge } from '../order/types.ts';
import type { Column } from './columns.ts';
import { common, neighborAt } from './neighbors.ts';
import type { GapDimension } from './types.ts';

/** Where along a front's edge its dimension line crosses: top and bottom lines stand apart from each other. */
const ALONG: Readonly<Record<Edge, number>> = { left: 0.5, right: 0.5, top: 0.86, bottom: 0.7 };

const OUTWARDS = { left: 'left', right: 'right', top: 'above', bottom: 'below' } as const;
const INWARDS = { left: 'right', right: 'left', top: 'below', bottom: 'above' } as const;

interface Context {
  readonly columns: readonly Column[];
  readonly outside: Placed;
  readonly rowIdOf: (drawer: PlacedDrawer) => string;
}

/** Every gap of a cabinet once, in the order of its drawers. */
export const dimensionsOf = (context: Context): readonly GapDimension[] =>
  context.columns.flatMap(({ drawers }) =>
    drawers.flatMap((drawer) => EDGES.flatMap((edge) => dimensionAt(drawer, edge, context) ?? [])),
  );

/** What there is to measure at an edge of a front; null when the front on its other side tells it. */
function dimensionAt(drawer: PlacedDrawer, edge: Edge, context: Context): GapDimension | null {
  const { fit, opening } = drawer;
  const { condition, situation } = fit.rules.edges[edge];
  const front = placedFront(drawer);
  const rowIds = [context.rowIdOf(drawer)];
  if (condition.kind === 'inset') {
    return { kind: 'frame', rowIds, figure: INWARDS[edge], ...across(edge, front, edgeOf(opening, edge)) };
  }
  const neighbor = neighborAt(drawer, edge, context.columns);
  if (neighbor !== null) return betweenFronts(drawer, neighbor, edge, context);
  if (situation === 'outer') {
    const outside = edgeOf(context.outside, edge);
    return { kind: 'reveal', rowIds, figure: OUTWARDS[edge], ...across(edge, front, outside) };
  }
  if (condition.kind !== 'share') return null;
  const end = edgeOf(front, edge) + (edge === 'left' || edge === 'top' ? -1 : 1) * condition.gap;
  return { kind: 'unseen', rowIds, figure: INWARDS[edge], ...across(edge, front, end) };
}

/** Told from the front above or at the left, unless that one is inset and tells of its frame. */
function betweenFronts(
  drawer: PlacedDrawer,
  neighbor: PlacedDrawer,
  edge: Edge,
  { columns, rowIdOf }: Context,
): GapDimension | null {
  const opposite = ({ left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const)[edge];
  const isSecond = edge === 'left' || edge === 'top';
  const told = neighborAt(neighbor, opposite, columns) === drawer;
  if (isSecond && told && neighbor.fit.rules.edges[opposite].condition.kind !== 'inset') return null;
  const [front, other] = [placedFront(drawer), placedFront(neighbor)];
  const { start, end } = common(edge === 'left' || edge === 'right' ? 'y' : 'x', front, other);
  return {
    kind: 'between',
    rowIds: [rowIdOf(drawer), rowIdOf(neighbor)],
    figure: OUTWARDS[edge],
    ...across(edge, front, edgeOf(other, opposite), { start, end }),
  };
}

/** Where an edge of a rectangle lies: x of an upright one, y of a level one. */
function edgeOf({ x, y, w, h }: Placed, edge: Edge): number {
  return { left: x, right: x + w, top: y, bottom: y + h }[edge];
}

/** A dimension outwards from a front's edge to a line, drawn within a run along the edge. */
function across(
  edge: Edge,
  front: Placed,
  line: number,
  run?: { readonly start: number; readonly end: number },
): Pick<GapDimension, 'edge' | 'axis' | 'mm' | 'from' | 'to'> {
  const level = edge === 'left' || edge === 'right';
  const { start, end } =
    run ?? (level ? { start: front.y, end: front.y + front.h } : { start: front.x, end: front.x + front.w });
  const place = start + ALONG[edge] * (end - start);
  const own = edgeOf(front, edge);
  const mm = edge === 'left' || edge === 'top' ? own - line : line - own;
  const at = (value: number) => (level ? { x: value, y: place } : { x: place, y: value });
  return { edge, axis: level ? 'x' : 'y', mm, from: at(own), to: at(line) };
}
