import type { Finding } from '../findings/finding.ts';
import { fault, valueOf, type DxfFile } from './dxf-groups.ts';

const DRAWN = { R12: ['POLYLINE', 'VERTEX', 'SEQEND', 'CIRCLE'], R2000: ['LWPOLYLINE', 'CIRCLE'] } as const;

/** What may be drawn (DXF-7), and on which layers, colour by layer (DXF-2, DXF-5). */
export function checkLayerUse(file: DxfFile, version: keyof typeof DRAWN): readonly Finding[] {
  const layers = (file.sections.get('TABLES') ?? []).filter(({ type }) => type === 'LAYER');
  const names = layers.map(({ groups }) => valueOf(groups, 2) ?? '');
  const declared = new Set(names);
  const allowed: readonly string[] = DRAWN[version];
  const table = layers.flatMap(({ line }, index) => {
    const name = names[index] ?? '';
    if (names.indexOf(name) !== index) return [fault('layer', `layer ${name} is declared twice`, line)];
    return /^[A-Z0-9_-]{1,31}$/.test(name)
      ? []
      : [fault('layer', `the layer name “${name}” is not allowed`, line)];
  });
  const entities = file.sections.get('ENTITIES') ?? [];
  const used = entities.flatMap(({ type, line, groups }) => {
    const layer = valueOf(groups, 8);
    const findings: Finding[] = [];
    if (!allowed.includes(type))
      findings.push(fault('entity-type', `${type} may not be drawn in ${version}`, line));
    if (layer === undefined || layer === '0') findings.push(fault('layer', `${type} is on layer 0`, line));
    else if (!declared.has(layer)) findings.push(fault('layer', `layer ${layer} is not declared`, line));
    if (groups.some(({ code }) => code === 62))
      findings.push(fault('color', `${type} has a colour of its own`, line));
    return findings;
  });
  return [...table, ...used];
}
