import type { LengthUnit } from '../order/types.ts';
import type { Part } from '../parts/types.ts';
import { partPaths } from './part-paths.ts';

/** A file that an order's folder will hold. */
export interface FolderFile {
  readonly path: string;
  readonly kind: 'DXF to cut' | 'SVG to cut' | 'table' | 'notes' | 'list of files';
  /** The part that it draws, and how many of it are cut; null for files about the whole order. */
  readonly part: string | null;
  readonly copies: number | null;
}

/** The files of an order's folder as they will be written: two of each part, then those of the whole order. */
export function folderContents(
  parts: readonly Pick<Part, 'id' | 'copies'>[],
  dxfUnit: LengthUnit,
): readonly FolderFile[] {
  const pathsOf = partPaths(dxfUnit);
  const whole = (path: string, kind: FolderFile['kind']): FolderFile => ({
    path,
    kind,
    part: null,
    copies: null,
  });
  return [
    ...parts.flatMap((part): readonly FolderFile[] => {
      const { dxf, svg } = pathsOf(part);
      const { id, copies } = part;
      return [
        { path: dxf, kind: 'DXF to cut', part: id, copies },
        { path: svg, kind: 'SVG to cut', part: id, copies },
      ];
    }),
    whole('fit.csv', 'table'),
    whole('schedule.csv', 'table'),
    whole('parts.csv', 'table'),
    whole('read-first.txt', 'notes'),
    whole('manifest.json', 'list of files'),
  ];
}
