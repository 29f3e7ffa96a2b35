import type { LengthUnit } from '../order/types.ts';
import type { Part } from '../parts/types.ts';
import { cutFileName } from './file-name.ts';

/** Where a part's cut files stand in the folder; SVG is in mm always (requirement SVG-1). */
export const partPaths =
  (dxfUnit: LengthUnit) =>
  ({ id }: Pick<Part, 'id'>): { readonly dxf: string; readonly svg: string } => ({
    dxf: `dxf/${cutFileName(id, dxfUnit, 'dxf')}`,
    svg: `svg/${cutFileName(id, 'mm', 'svg')}`,
  });
