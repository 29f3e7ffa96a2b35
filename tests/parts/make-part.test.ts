import { describe, expect, test } from 'vitest';
import { bottomFence } from '../../core/jigs/kinds/bottom-fence.ts';
import { cornerFence } from '../../core/jigs/kinds/corner-fence.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { compensate } from '../../core/parts/compensate.ts';
import { makePart } from '../../core/parts/make-part.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { contextOf, setup } from '../jigs/setups.ts';

/** The plate of a bottom fence on a machine. */
function plateOn(machine: MachineProfile) {
  const context = { ...contextOf('router'), machine };
  const jig = bottomFence.build('B1', [setup()], context);
  const [piece] = jig.pieces;
  if (piece === undefined) throw new Error('no plate');
  return makePart(jig, piece, machine, STROKE_FONT);
}

const router = contextOf('router').machine;

describe('makePart on a router', () => {
  test('BONE: slots for square keys get a relief in each corner, and no warning', () => {
    const { value, findings } = plateOn({ ...router, joint: 'key', kerf: 3.175, reliefRadius: 1.65 });
    expect(findings).toEqual([]);
    const slots = value.features.filter(
      ({ operation, contour }) => operation === 'cut-inner' && contour.kind === 'ring',
    );
    expect(slots).toHaveLength(3);
    for (const { contour } of slots) {
      const arcs = contour.kind === 'ring' ? contour.vertices.filter(({ bulge }) => bulge !== 0) : [];
      expect(arcs.length).toBeGreaterThanOrEqual(4);
    }
  });

  test('BONE: the inside corner of a corner fence gets one, at least the tool radius and 0.05 mm', () => {
    const context = contextOf('router');
    const jig = cornerFence.build(
      'C1',
      [setup(), setup({ edge: 'right', overhang: 30, edgeLength: 160 })],
      context,
    );
    const [plate] = jig.pieces;
    if (plate === undefined) throw new Error('no plate');
    const { value, findings } = makePart(jig, plate, context.machine, STROKE_FONT);
    expect(findings).toEqual([]);
    const outline = value.features.find(({ operation }) => operation === 'cut-outer')?.contour;
    const radii = (outline?.kind === 'ring' ? outline.vertices : []).flatMap((from, index, all) => {
      const to = all[(index + 1) % all.length] ?? from;
      const chord = Math.hypot(to.x - from.x, to.y - from.y);
      // Arcs that turn clockwise are cut into the material.
      return from.bulge < 0 ? [(chord * (1 + from.bulge ** 2)) / (4 * Math.abs(from.bulge))] : [];
    });
    expect(Math.min(...radii)).toBeGreaterThanOrEqual(router.kerf / 2 + 0.05 - 1e-9);
  });

  test('drills a hole of the tool’s own diameter, mills a wider one, refuses a narrower one', () => {
    const operations = (pinDiameter: number) =>
      plateOn({ ...router, pinDiameter })
        .value.features.filter(({ contour }) => contour.kind === 'circle')
        .map(({ operation }) => operation);
    expect(operations(6.35)).toEqual(['drill', 'drill', 'drill', 'cut-inner']);
    expect(operations(8)).toEqual(['cut-inner', 'cut-inner', 'cut-inner', 'cut-inner']);
    expect(plateOn({ ...router, pinDiameter: 5 }).findings[0]?.message).toBe(
      'A hole of 5 mm in B1-plate is narrower than the tool of 6.35 mm; use a narrower tool, or wider pins.',
    );
  });

  test('says which contour no tool can follow when the path is wanted', () => {
    const { value } = plateOn({
      ...router,
      joint: 'key',
      kerf: 12.7,
      reliefRadius: 6.5,
      compensation: 'file',
    });
    const { findings } = compensate(value, { ...router, kerf: 12.7, compensation: 'file' });
    expect(findings.some(({ code }) => code === 'parts/too-narrow')).toBe(true);
  });
});
