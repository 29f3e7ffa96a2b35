import type { LengthUnit } from '../order/types.ts';
import type { Part } from '../parts/types.ts';
import { USUAL, includesJig, includesKind, type OutputChoice } from './output-choice.ts';
import { PAPER_KINDS, type OutputKindId } from './output-kinds.ts';
import { partPaths } from './part-paths.ts';

/** A file that an order's folder will hold, or a folder of them, whose path ends in a slash. */
export interface FolderFile {
  readonly path: string;
  readonly kind:
    | 'DXF to cut'
    | 'SVG to cut'
    | 'sheets to cut'
    | 'test piece'
    | 'solids to print'
    | 'to print'
    | 'table'
    | 'notes'
    | 'list of files';
  /** The part that it draws, and how many of it are cut; null for files about the whole order. */
  readonly part: string | null;
  readonly copies: number | null;
}

/** The files of an order's folder as they will be written: those of each part, then those of the whole order. */
export function folderContents(
  parts: readonly Pick<Part, 'id' | 'jig' | 'copies'>[],
  dxfUnit: LengthUnit,
  choice: OutputChoice = USUAL,
): readonly FolderFile[] {
  const pathsOf = partPaths(dxfUnit);
  const list = (id: OutputKindId, path: string, kind: FolderFile['kind']): readonly FolderFile[] =>
    includesKind(choice, id) ? [{ path, kind, part: null, copies: null }] : [];
  return [
    ...parts
      .filter(({ jig }) => includesJig(choice, jig))
      .flatMap((part): readonly FolderFile[] => {
        const { dxf, svg } = pathsOf(part);
        const { id, copies } = part;
        return [
          ...(includesKind(choice, 'dxf')
            ? [{ path: dxf, kind: 'DXF to cut' as const, part: id, copies }]
            : []),
          ...(includesKind(choice, 'svg')
            ? [{ path: svg, kind: 'SVG to cut' as const, part: id, copies }]
            : []),
        ];
      }),
    ...PAPER_KINDS.flatMap((id) => list(id, `paper/${id}.pdf`, 'to print')),
    // How many sheets there will be is known when they are packed.
    ...list('sheets', 'sheets/', 'sheets to cut'),
    ...list('coupon', 'coupon/', 'test piece'),
    ...list('solids', 'solids/', 'solids to print'),
    ...list('fit', 'fit.csv', 'table'),
    ...list('schedule', 'schedule.csv', 'table'),
    ...list('parts', 'parts.csv', 'table'),
    ...list('read-first', 'read-first.txt', 'notes'),
    { path: 'manifest.json', kind: 'list of files', part: null, copies: null },
  ];
}
