import type { LengthUnit } from '../order/types.ts';
import { cutFileName } from './file-name.ts';

/**
 * Where a sheet's cut files stand in the folder; SVG is in mm always (requirement SVG-1).
 *
 *     sheetPaths('mm')(1, 'birch plywood').dxf // sheets/sheet-01-birch-plywood_mm.dxf
 */
export const sheetPaths =
  (dxfUnit: LengthUnit) =>
  (number: number, material: string): { readonly dxf: string; readonly svg: string } => {
    const id = `sheet-${String(number).padStart(2, '0')}-${slug(material)}`;
    return {
      dxf: `sheets/${cutFileName(id, dxfUnit, 'dxf')}`,
      svg: `sheets/${cutFileName(id, 'mm', 'svg')}`,
    };
  };

/** A word for a file name that every system takes: small letters, digits and hyphens. */
function slug(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-');
  return plain.replace(/^-+|-+$/g, '').slice(0, 40) || 'sheet';
}
