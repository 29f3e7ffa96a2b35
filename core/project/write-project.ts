import { drawerCells } from '../order/drawer-cells.ts';
import type { Drawer, LengthUnit } from '../order/types.ts';
import type { Project } from './types.ts';
import { writeDocument } from './write-document.ts';

/** Writes a project as JSON text that `parseProject` reads back the same, ending in a line break. */
export function writeProject(project: Project): string {
  const { drawers, unit } = project.order;
  return writeDocument(
    project,
    drawers.map((drawer) => drawerDocument(drawer, unit)),
  );
}

const drawerDocument = (drawer: Drawer, unit: LengthUnit): object => ({
  ...(drawer.row > 0 ? { row: drawer.row } : {}),
  ...drawerCells(drawer, unit),
});
