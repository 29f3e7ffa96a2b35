import type { Finding } from '../findings/finding.ts';
import type { Point } from '../geometry/types.ts';
import { arcExtremes } from './arc-extremes.ts';
import type { DxfSettings } from './drawing.ts';
import { fault, numberOf, valueOf, type DxfFile } from './dxf-groups.ts';
import type { Outline } from './dxf-outlines.ts';
import { MM_PER_UNIT } from './entities.ts';

/** Values of the DXF reference, written down here again on purpose: the writer's table may be wrong. */
const VERSION = { R12: 'AC1009', R2000: 'AC1015' } as const;
const INSUNITS = { mm: 4, in: 1 } as const;
const MEASUREMENT = { mm: 1, in: 0 } as const;

/** mm. How far the stated extents may be from the true ones (requirement DXF-3). */
const EXTENTS_ERROR = 1e-3;

/** Version, unit and extents say what is drawn (DXF-3). */
export function checkHeader(
  file: DxfFile,
  outlines: readonly Outline[],
  settings: DxfSettings,
): readonly Finding[] {
  const { header } = file;
  const expected = [
    ['$ACADVER', 1, VERSION[settings.version], 'version'],
    ['$INSUNITS', 70, String(INSUNITS[settings.unit]), 'unit'],
    ['$MEASUREMENT', 70, String(MEASUREMENT[settings.unit]), 'unit'],
  ] as const;
  const stated = expected.flatMap(([name, code, value, kind]) => {
    const found = valueOf(header.get(name) ?? [], code);
    return found === value ? [] : [fault(kind, `${name} is ${found ?? 'missing'} and should be ${value}`, 1)];
  });
  return [...stated, ...checkExtents(file, outlines, MM_PER_UNIT[settings.unit])];
}

function checkExtents({ header }: DxfFile, outlines: readonly Outline[], scale: number): readonly Finding[] {
  const least = { x: Infinity, y: Infinity };
  const most = { x: -Infinity, y: -Infinity };
  for (const { x, y } of outlines.flatMap(outermost)) {
    least.x = Math.min(least.x, x);
    least.y = Math.min(least.y, y);
    most.x = Math.max(most.x, x);
    most.y = Math.max(most.y, y);
  }
  const corners = [
    ['$EXTMIN', least.x, least.y],
    ['$EXTMAX', most.x, most.y],
  ] as const;
  return corners.flatMap(([name, x, y]) => {
    const groups = header.get(name) ?? [];
    const off = Math.max(Math.abs(numberOf(groups, 10) - x), Math.abs(numberOf(groups, 20) - y)) * scale;
    return off <= EXTENTS_ERROR ? [] : [fault('extents', `${name} should be (${x}, ${y})`, 1)];
  });
}

function outermost({ circle, vertices, closed }: Outline): readonly Point[] {
  if (circle !== null) {
    const [x, y, r] = circle;
    return [
      { x: x - r, y: y - r },
      { x: x + r, y: y + r },
    ];
  }
  return vertices.flatMap((vertex, index) => {
    const next = vertices[index + 1] ?? (closed ? vertices[0] : undefined);
    return next === undefined ? [vertex] : [vertex, ...arcExtremes(vertex, next)];
  });
}
