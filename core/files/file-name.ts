import type { LengthUnit } from '../order/types.ts';

/**
 * The name of a cut file, with its unit for importers that ask (requirement DXF-3):
 * `cutFileName('B1-plate', 'mm', 'dxf')` is `B1-plate_mm.dxf`.
 */
export const cutFileName = (id: string, unit: LengthUnit, extension: 'dxf' | 'svg'): string =>
  `${id}_${unit}.${extension}`;
