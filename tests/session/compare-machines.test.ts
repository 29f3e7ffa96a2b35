import { describe, expect, test } from 'vitest';
import { compareMachines } from '../../core/session/compare-machines.ts';
import { readMachine } from '../jigs/setups.ts';
import { demoDraft } from '../renderer-2d/demo-draft.ts';

const { draft, designed } = demoDraft('harbor-library');
const { machine } = draft;

describe('compareMachines', () => {
  test('finds nothing where nothing is edited', () => {
    expect(compareMachines(draft, { ...machine, note: 'measured' })).toEqual({
      jigs: designed.jigs.length,
      changed: [],
      path: false,
      files: false,
      begun: [],
    });
  });

  test('tells that only the lines move where the kerf is another', () => {
    const { changed, path, files } = compareMachines(draft, { ...machine, kerf: 0.25 });
    expect({ changed, path, files }).toEqual({ changed: [], path: true, files: false });
  });

  test('tells nothing of a kerf that the machine allows for itself', () => {
    const byMachine = { ...machine, compensation: 'machine' as const };
    const { path } = compareMachines({ ...draft, machine: byMachine }, { ...byMachine, kerf: 0.3 });
    expect(path).toBe(false);
  });

  test('tells that the files are written another way', () => {
    const { changed, path, files } = compareMachines(draft, {
      ...machine,
      dxf: { ...machine.dxf, version: 'R12' },
    });
    expect({ changed, path, files }).toEqual({ changed: [], path: false, files: true });
  });

  test('names the jigs that are built another way from a thicker sheet', () => {
    const thicker = { ...machine, sheet: { ...machine.sheet, thickness: 6.4 } };
    const { changed, jigs } = compareMachines(draft, thicker);
    expect(changed.length).toBeGreaterThan(0);
    expect(changed.length).toBeLessThanOrEqual(jigs);
    expect(changed.every(({ change }) => change === 'other pieces')).toBe(true);
  });

  test('tells of jigs that come and go with another machine', () => {
    const { changed } = compareMachines(draft, readMachine('router'));
    expect(new Set(changed.map(({ id }) => id)).size).toBe(changed.length);
    expect(changed.length).toBeGreaterThan(0);
  });
});
