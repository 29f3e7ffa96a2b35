import type { Finding } from '../findings/finding.ts';
import { fault, valueOf, type DxfFile, type DxfRecord } from './dxf-groups.ts';

/** A pointer to another record by its handle; 0 points to nothing (DXF reference). */
const isPointer = (code: number): boolean => (code >= 320 && code <= 369) || (code >= 390 && code <= 399);

/** Handles are unique, below $HANDSEED, everywhere in R2000, and every pointer has its record. */
export function checkHandles(file: DxfFile, version: 'R12' | 'R2000'): readonly Finding[] {
  const records = [...file.sections.values()]
    .flat()
    .filter(({ type }) => type !== 'ENDTAB' && type !== 'CLASS');
  const seen = new Set<string>();
  const findings = records.flatMap((record) => {
    const handle = handleOf(record);
    if (handle === undefined) {
      const needed = version === 'R2000' && record.groups.length > 0;
      return needed ? [fault('handle', `${record.type} has no handle`, record.line)] : [];
    }
    if (seen.has(handle))
      return [fault('handle', `${record.type} has the handle ${handle} of another record`, record.line)];
    seen.add(handle);
    return [];
  });
  const pointers = records.flatMap(({ groups }) =>
    groups
      .filter(({ code, value }) => isPointer(code) && value !== '0' && !seen.has(value))
      .map(({ value, line }) => fault('pointer', `no record has the handle ${value}`, line)),
  );
  const seed = parseInt(valueOf(file.header.get('$HANDSEED') ?? [], 5) ?? '', 16);
  const highest = Math.max(0, ...[...seen].map((handle) => parseInt(handle, 16)));
  const seedFault = version === 'R2000' && !(seed > highest);
  return [
    ...findings,
    ...pointers,
    ...(seedFault ? [fault('handle', '$HANDSEED is not above every handle', 1)] : []),
  ];
}

/** Group 105 in a dimension style, 5 elsewhere. */
const handleOf = ({ type, groups }: DxfRecord): string | undefined =>
  valueOf(groups, type === 'DIMSTYLE' ? 105 : 5);
