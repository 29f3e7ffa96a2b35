import { writeLength } from '../units/write-length.ts';
import type { OrderColumn } from './columns.ts';
import { defined } from './defined.ts';
import { writeEdgeCondition } from './edge-condition.ts';
import { writeFrontConstruction } from './front-construction.ts';
import type { Drawer, Edge, LengthUnit } from './types.ts';

/** A drawer as the cells that are read back as the same drawer; absent values have no cell. */
export function drawerCells(
  drawer: Drawer,
  unit: LengthUnit,
): Readonly<Partial<Record<OrderColumn, string>>> {
  const length = (mm: number | undefined): string | undefined =>
    mm === undefined ? undefined : writeLength(mm, unit);
  const edge = (name: Edge): string | undefined => {
    const condition = drawer.edges[name];
    return condition === undefined ? undefined : writeEdgeCondition(condition, unit);
  };
  return defined({
    cabinet: drawer.cabinet,
    drawer: drawer.drawer,
    qty: String(drawer.qty),
    style: drawer.style,
    opening_w: length(drawer.openingW),
    opening_h: length(drawer.openingH),
    room: drawer.room,
    cabinet_kind: drawer.cabinetKind,
    column: String(drawer.column),
    position: drawer.position,
    left: edge('left'),
    right: edge('right'),
    top: edge('top'),
    bottom: edge('bottom'),
    front_w: length(drawer.frontW),
    front_h: length(drawer.frontH),
    box_w: length(drawer.boxW),
    box_h: length(drawer.boxH),
    box_d: length(drawer.boxD),
    front: writeFrontConstruction(drawer.front, unit),
    front_thickness: length(drawer.frontThickness),
    species: drawer.species,
    box_side: length(drawer.boxSide),
    box_front: length(drawer.boxFront),
    pull: drawer.pull,
    note: drawer.note,
  });
}
