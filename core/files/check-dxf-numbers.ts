import type { Finding } from '../findings/finding.ts';
import { fault, type DxfFile, type Group } from './dxf-groups.ts';

/** Codes of real numbers, of whole numbers and of handles (DXF reference, group codes in numerical order). */
const isReal = (code: number): boolean => (code >= 10 && code <= 59) || (code >= 140 && code <= 149);
const isWhole = (code: number): boolean =>
  (code >= 60 && code <= 99) ||
  (code >= 170 && code <= 179) ||
  (code >= 270 && code <= 289) ||
  (code >= 370 && code <= 389);
const isHandle = (code: number): boolean =>
  code === 5 || code === 105 || (code >= 320 && code <= 369) || (code >= 390 && code <= 399);

const COORDINATE = /^(?!-0\.0*$)-?(0|[1-9]\d*)\.\d{6}$/;
const BULGE = /^(?!-0\.0*$)-?(0|[1-9]\d*)\.\d{9}$/;

/** Every number is a finite plain decimal: 6 places, 9 for the bulges of polylines; whole ones have no point. */
export function checkNumbers(file: DxfFile): readonly Finding[] {
  const header = [...file.header.values()].flatMap((groups) => checkGroups(groups, false));
  const records = [...file.sections.values()]
    .flat()
    .flatMap(({ type, groups }) => checkGroups(groups, type === 'VERTEX' || type === 'LWPOLYLINE'));
  return [...header, ...records];
}

function checkGroups(groups: readonly Group[], hasBulges: boolean): readonly Finding[] {
  const findings: Finding[] = [];
  for (const { code, value, line } of groups) {
    const shape = shapeOf(code, hasBulges);
    if (shape === null || shape.test(value)) continue;
    findings.push(fault('number', `“${value}” (group ${code}) is not written as ${nameOf(shape)}`, line));
  }
  return findings;
}

const HANDLE = /^(0|[1-9A-F][0-9A-F]*)$/;
const WHOLE = /^-?\d+$/;

function shapeOf(code: number, hasBulges: boolean): RegExp | null {
  if (code === 42 && hasBulges) return BULGE;
  if (isReal(code)) return COORDINATE;
  if (isWhole(code)) return WHOLE;
  return isHandle(code) ? HANDLE : null;
}

function nameOf(shape: RegExp): string {
  if (shape === BULGE) return 'a decimal with 9 places';
  if (shape === COORDINATE) return 'a decimal with 6 places';
  return shape === WHOLE ? 'a whole number' : 'a handle';
}
