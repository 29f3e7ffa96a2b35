import type { Finding } from '../findings/finding.ts';
import { checkHandles } from './check-dxf-handles.ts';
import { checkHeader } from './check-dxf-header.ts';
import { checkLayerUse } from './check-dxf-layers.ts';
import { checkNumbers } from './check-dxf-numbers.ts';
import { checkOutline } from './check-dxf-outlines.ts';
import type { DxfSettings } from './drawing.ts';
import { readGroups } from './dxf-groups.ts';
import { outlinesOf } from './dxf-outlines.ts';

const SECTIONS = {
  R12: ['HEADER', 'TABLES', 'BLOCKS', 'ENTITIES'],
  R2000: ['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'],
} as const;

/**
 * Reads a DXF file back and finds what an importer could stumble over (requirements DXF-2 to DXF-5, DXF-7): what
 * readers' own audits let pass, such as NaN, exponents, wrong counts, undeclared layers, false extents.
 * An empty list means that the file is right for these settings.
 */
export function checkDxf(text: string, settings: DxfSettings): readonly Finding[] {
  const file = readGroups(text);
  const { version } = settings;
  const missing = SECTIONS[version].filter((name) => !file.sections.has(name));
  const outlines = outlinesOf(file.sections.get('ENTITIES') ?? []);
  return [
    ...file.findings,
    ...missing.map((name) => ({
      code: 'dxf/structure',
      severity: 'error' as const,
      message: `The section ${name} is missing.`,
      at: {},
      values: { name },
    })),
    ...checkNumbers(file),
    ...checkHeader(file, outlines, settings),
    ...checkLayerUse(file, version),
    ...checkHandles(file, version),
    ...outlines.flatMap((outline) => checkOutline(outline, settings)),
  ];
}
