import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';

/** A group as read: its code, its value, and the line of the value, counted from 1. */
export interface Group {
  readonly code: number;
  readonly value: string;
  readonly line: number;
}

/** From one group 0 to the next: an entity, a table entry, an object. */
export interface DxfRecord {
  readonly type: string;
  readonly line: number;
  readonly groups: readonly Group[];
}

/** A DXF file as read, for the checker: no meaning is put on anything but sections and header variables. */
export interface DxfFile {
  readonly header: ReadonlyMap<string, readonly Group[]>;
  readonly sections: ReadonlyMap<string, readonly DxfRecord[]>;
  readonly findings: readonly Finding[];
}

/** A finding of the checker at a line of the file. */
export const fault = (code: string, message: string, line: number): Finding =>
  error(`dxf/${code}`, `Line ${line}: ${message}`, { row: line }, { line });

/** Reads the text on its own, with nothing of the writer's. */
export function readGroups(text: string): DxfFile {
  const lines = text.split(/\r?\n/);
  if (lines.at(-1) === '') lines.pop();
  const findings: Finding[] = [];
  if (lines.length % 2 === 1) findings.push(fault('structure', 'a code without a value', lines.length));
  const records: { type: string; line: number; groups: Group[] }[] = [];
  for (let index = 0; index + 1 < lines.length; index += 2) {
    const code = (lines[index] ?? '').trim();
    const value = lines[index + 1] ?? '';
    const line = index + 2;
    if (!/^\d{1,4}$/.test(code)) {
      findings.push(fault('structure', `“${code}” is no group code`, index + 1));
    } else if (code === '0') {
      records.push({ type: value, line, groups: [] });
    } else {
      const last = records.at(-1);
      if (last === undefined) findings.push(fault('structure', 'a group before the first record', line));
      else last.groups.push({ code: Number(code), value, line });
    }
  }
  if (records.at(-1)?.type !== 'EOF')
    findings.push(fault('structure', 'the file does not end with EOF', lines.length));
  const { sections, header, faults } = sectionsOf(records);
  return { header, sections, findings: [...findings, ...faults] };
}

function sectionsOf(records: readonly DxfRecord[]): {
  readonly sections: Map<string, readonly DxfRecord[]>;
  readonly header: Map<string, readonly Group[]>;
  readonly faults: readonly Finding[];
} {
  const sections = new Map<string, DxfRecord[]>();
  const header = new Map<string, Group[]>();
  const faults: Finding[] = [];
  let open: DxfRecord[] | null = null;
  for (const record of records) {
    const { type, line, groups } = record;
    if (type === 'SECTION') {
      const name = groups[0]?.value ?? '';
      if (open !== null) faults.push(fault('structure', `section ${name} begins inside another`, line));
      if (sections.has(name)) faults.push(fault('structure', `section ${name} comes twice`, line));
      open = [];
      sections.set(name, open);
      if (name === 'HEADER')
        variablesOf(groups.slice(1)).forEach((value, key) => header.set(key, [...value]));
    } else if (type === 'ENDSEC' || type === 'EOF') {
      if ((open === null) !== (type === 'EOF')) faults.push(fault('structure', `${type} out of place`, line));
      open = null;
    } else if (open === null) {
      faults.push(fault('structure', `${type} outside every section`, line));
    } else {
      open.push(record);
    }
  }
  return { sections, header, faults };
}

/** Group 9 names a variable; the groups up to the next are its value. */
function variablesOf(groups: readonly Group[]): ReadonlyMap<string, readonly Group[]> {
  const variables = new Map<string, Group[]>();
  let current: Group[] = [];
  for (const group of groups) {
    if (group.code === 9) {
      current = [];
      variables.set(group.value, current);
    } else {
      current.push(group);
    }
  }
  return variables;
}

export const valueOf = (groups: readonly Group[], code: number): string | undefined =>
  groups.find((group) => group.code === code)?.value;

export const numberOf = (groups: readonly Group[], code: number): number =>
  Number(valueOf(groups, code) ?? NaN);
