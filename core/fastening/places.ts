import type { StockScrew } from '../rules/fastening-types.ts';
import type { DrawerContext } from './drawer-context.ts';
import type { PlaceSpec } from './place-spec.ts';
import type { Corner } from './types.ts';

/** mm. Lengths that differ by less are the same row. */
const SAME = 1e-6;

/** Room in mm that one screw takes in a row: its head, and room beside it. */
const taken = ({ standard }: DrawerContext, screw: StockScrew): number =>
  screw.headDiameter.value + standard.fastening.headRoom.value;

/**
 * The screws of the corners: each in its own quarter of the box front, so that no two heads meet. A box that is
 * too low for two rows has one, in its two bottom corners. A box that is so small that the standard's place is
 * past its quarter has its screws in the middle of the quarters.
 */
export function cornerSpecs(context: DrawerContext, screw: StockScrew): readonly PlaceSpec[] {
  const { walls, standard } = context;
  const { side, height } = standard.fastening.place;
  const clear = walls.height - walls.floor;
  const rows = clear >= 2 * taken(context, screw) + standard.fastening.headRoom.value ? 2 : 1;
  const room = taken(context, screw) / 2;
  const halfX = walls.innerWidth / 2 - room;
  const halfY = (rows === 2 ? clear / 2 : clear) - (rows === 2 ? room : 0);
  const x = side.value <= halfX ? side.value : walls.innerWidth / 4;
  const y = height.value <= halfY ? height.value : clear / (2 * rows);
  const ends = rows === 2 ? (['bottom', 'top'] as const) : (['bottom'] as const);
  return ends.flatMap((end) => {
    const low = end === 'bottom' ? walls.floor : 0;
    return (['right', 'left'] as const).map((hand): PlaceSpec => ({
      corner: { hand, end },
      index: 0,
      along: 'end',
      prefer: { x, y: low + y },
      from: { x: 0, y: low },
      to: { x: halfX, y: low + halfY },
      aim: 'margin',
    }));
  });
}

/** A corner's spec with where its screw went, in its own frame. */
export interface Settled {
  readonly spec: PlaceSpec;
  readonly entry: { readonly x: number; readonly y: number };
}

/**
 * The screws between two corners of a row: from each corner inwards by steps of quarters of the standard's
 * spacing, so that one guide serves boxes of many widths, until the two innermost are no further apart than it.
 */
export function rowSpecs(context: DrawerContext, right: Settled, left: Settled): readonly PlaceSpec[] {
  const spacing = context.standard.fastening.spacing.value;
  let gap = context.walls.innerWidth - right.entry.x - left.entry.x;
  let reached = 0;
  const specs: PlaceSpec[] = [];
  for (let index = 1; gap > spacing + SAME; index += 1) {
    const step = stepInwards(gap, spacing);
    reached += step;
    gap -= 2 * step;
    // How far it may leave its place, and no two neighbours come further apart than the spacing.
    const [outwards, inwards] = gap > spacing ? [0, 0] : [(spacing - gap) / 2, spacing - step];
    for (const { spec, entry } of [right, left]) {
      const x = entry.x + reached;
      specs.push({
        ...spec,
        index,
        prefer: { x, y: entry.y },
        from: { x: x - Math.min(outwards, step / 4), y: spec.from.y },
        to: { x: x + Math.min(inwards, gap / 4), y: spec.to.y },
        aim: 'row',
      });
    }
  }
  return specs;
}

/** The largest quarter of the spacing that leaves the two innermost screws room, and no more than the spacing. */
function stepInwards(gap: number, spacing: number): number {
  if (gap < 1.25 * spacing) return spacing / 4;
  if (gap <= 2 * spacing) return spacing / 2;
  return gap <= 2.5 * spacing ? (3 / 4) * spacing : spacing;
}

/** The screws up a side of a box that is taller than the spacing, evenly between its corners. */
export function columnSpecs(context: DrawerContext, bottom: Settled, top: Settled): readonly PlaceSpec[] {
  const { walls, standard } = context;
  const spacing = standard.fastening.spacing.value;
  const gap = walls.height - bottom.entry.y - top.entry.y;
  const count = Math.max(0, Math.ceil((gap - SAME) / spacing) - 1);
  const step = gap / (count + 1);
  const free = Math.min((spacing - step) / 2, step / 4);
  const corner: Corner = bottom.spec.corner;
  return Array.from({ length: count }, (_, index): PlaceSpec => {
    const y = bottom.entry.y + step * (index + 1);
    return {
      corner,
      index: index + 1,
      along: 'side',
      prefer: { x: bottom.entry.x, y },
      from: { x: bottom.spec.from.x, y: y - free },
      to: { x: bottom.spec.to.x, y: y + free },
      aim: 'row',
    };
  });
}
