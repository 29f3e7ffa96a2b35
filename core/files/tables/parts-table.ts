import { bounds } from '../../geometry/measure.ts';
import type { Part } from '../../parts/types.ts';
import { writeCsv } from '../csv.ts';

const COLUMNS = [
  'part',
  'jig',
  'copies',
  'title',
  'material',
  'thickness_mm',
  'width_mm',
  'height_mm',
  'hand',
  'sets_mm',
  'dxf',
  'svg',
] as const;

/** `parts.csv`: what to cut from what, at finished size. */
export const partsTable = (
  parts: readonly Part[],
  pathsOf: (part: Part) => { readonly dxf: string; readonly svg: string },
): string =>
  writeCsv(
    COLUMNS,
    parts.map((part) => {
      const outline = part.features.filter(({ operation }) => operation === 'cut-outer');
      const { min, max } = bounds(...outline.map(({ contour }) => contour));
      const { dxf, svg } = pathsOf(part);
      return [
        part.id,
        part.jig,
        part.copies,
        part.title,
        part.material,
        part.thickness,
        max.x - min.x,
        max.y - min.y,
        part.hand ?? '',
        part.sets
          .map(({ edges, overhang }) => `${edges.join('/')} ${Number(overhang.toFixed(6))}`)
          .join(', '),
        dxf,
        svg,
      ];
    }),
  );
