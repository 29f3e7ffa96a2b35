import { describe, expect, test } from 'vitest';
import { createDesignSession } from '../../core/session/design-session.ts';
import { jigSharer } from '../../core/session/jig-sharer.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { solve } from '../jigs-cover/load-solver.ts';
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

describe('compareMachines with what a design has', () => {
  const session = createDesignSession(STROKE_FONT);
  const sharer = jigSharer(async () => solve);
  const own = { ...draft, rows: draft.rows.slice(0, 12) };

  /** As the worker asks it. */
  async function compared(sharing: 'each' | 'fewest', after: MachineProfile, rows = own.rows) {
    const wished = { ...own, rows, sharing };
    const of = session.toShare(wished);
    const made = session.design(wished, 1, await sharer.share(of, sharing));
    const known = {
      fits: of.fits,
      fastenings: Object.values(made.fastenings),
      jigs: made.jigs,
      findings: made.findings.map(({ finding }) => finding),
      sharedAfter: await sharer.tryOn({ ...of, context: { ...of.context, machine: after } }, sharing),
    };
    return { made, comparison: compareMachines(wished, after, known) };
  }

  test('says the same as one that works all of it out anew', async () => {
    const thicker = { ...machine, sheet: { ...machine.sheet, thickness: 6.4 } };
    const { comparison } = await compared('each', thicker);
    expect(comparison).toEqual(compareMachines(own, thicker));
  });

  test('compares the jigs that drawers share, by the jigs that the design shows', async () => {
    // The rows of the order whose drawers share a setting though they want different overhangs.
    const { fits, ...of } = session.toShare(draft);
    const whole = await sharer.share({ ...of, fits }, 'fewest');
    const places = new Set(
      (whole.value?.jigs ?? []).flatMap(({ place, settings }) =>
        settings.flatMap(({ lines }) => {
          if (place !== 'bottom') return [];
          const overhangs = lines.map((line) => (fits[line]?.overhang.bottom ?? 0).toFixed(3));
          return new Set(overhangs).size > 1 ? lines : [];
        }),
      ),
    );
    const rows = draft.rows.filter((_, place) => places.has(place));
    const same = await compared('fewest', { ...machine, note: 'measured' }, rows);
    expect(same.made.sharing?.totalAdjustment).toBeGreaterThan(0);
    expect(same.comparison).toEqual({
      jigs: same.made.jigs.length,
      changed: [],
      path: false,
      files: false,
      begun: [],
    });
    const thicker = { ...machine, sheet: { ...machine.sheet, thickness: 6.4 } };
    const { made, comparison } = await compared('fewest', thicker, rows);
    const ids = new Set(made.jigs.map(({ id }) => id));
    expect(comparison.changed.length).toBeGreaterThan(0);
    expect(comparison.changed.filter(({ change, id }) => change === 'new' || !ids.has(id))).toEqual([]);
  });
});
