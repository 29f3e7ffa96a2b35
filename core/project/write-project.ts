import { defined } from '../order/defined.ts';
import { drawerCells } from '../order/drawer-cells.ts';
import type { Drawer, LengthUnit } from '../order/types.ts';
import { standardDocument } from '../rules/write-standard.ts';
import { PROJECT_FORMAT, PROJECT_VERSION } from './project-schema.ts';
import type { Project } from './types.ts';

/** Writes a project as JSON text that `parseProject` reads back the same, ending in a line break. */
export function writeProject({ order, standard }: Project): string {
  const { name, date, unit } = order;
  const document = {
    format: PROJECT_FORMAT,
    version: PROJECT_VERSION,
    order: {
      name,
      ...defined({ date }),
      unit,
      drawers: order.drawers.map((drawer) => drawerDocument(drawer, unit)),
    },
    standard: standardDocument(standard),
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}

const drawerDocument = (drawer: Drawer, unit: LengthUnit): object => ({
  ...(drawer.row > 0 ? { row: drawer.row } : {}),
  ...drawerCells(drawer, unit),
});
