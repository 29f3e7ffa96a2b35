import { isRecord } from '../../collections/is-record.ts';
import { parseLength } from '../../units/parse-length.ts';
import { addedSheets, addedTabs } from './added-sheets.ts';

/**
 * A version 1 document of a machine profile as one of version 2: sheets, tabs and their layer get the values that
 * the profiles of the program have for a machine of this kind. What is wrong with the document stays, for the
 * schema to tell.
 */
export function machineFrom1(json: unknown): unknown {
  if (!isRecord(json)) return json;
  const { kind } = json;
  return {
    sheets: addedSheets(kind, mmOf(json['kerf'])),
    tabs: addedTabs(kind),
    ...json,
    version: 2,
    layers: withTabs(json['layers']),
  };
}

/** mm; 0 for what is no length, which the schema tells. */
function mmOf(text: unknown): number {
  const read = parseLength(typeof text === 'string' ? text : '', { unit: 'mm', zero: true });
  return read.ok ? read.mm : 0;
}

/** The layer of tabs, by a name that no other operation of the profile has. */
function withTabs(layers: unknown): unknown {
  if (!isRecord(layers)) return layers;
  const taken = new Set(Object.values(layers).map((layer) => (isRecord(layer) ? layer['name'] : undefined)));
  const name = ['TABS', 'TAB_MARKS', 'HOLDING_TABS', 'TABS_2', 'TABS_3', 'TABS_4'].find(
    (free) => !taken.has(free),
  );
  return { tab: { name, colorIndex: 2, color: '#b08a00' }, ...layers };
}
