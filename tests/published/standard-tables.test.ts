import { describe, expect, test } from 'vitest';
import { readStandard } from '../rules/read-standard.ts';

const FILES = [
  'face-frame-undermount.json',
  'face-frame-side-mount.json',
  'frameless-undermount.json',
] as const;

const INCH = 25.4;

describe('species', () => {
  // Wood Handbook GTR-190 and GTR-282, Table 4-3: shrinkage from green to ovendry, percent, radial and tangential.
  // Its Table 13-5 is Eq 13-3 at 10 % moisture: C = S / (3000 - 20 S), and S / (2200 - 12 S) for woods whose
  // fibres are saturated at 22 %.
  const SHRINKAGE: readonly (readonly [name: string, radial: number, tangential: number, low?: 'low'])[] = [
    ['red alder', 4.4, 7.3],
    ['white ash', 4.9, 7.8],
    ['American basswood', 6.6, 9.3],
    ['American beech', 5.5, 11.9],
    ['paper birch', 6.3, 8.6],
    ['yellow birch', 7.3, 9.5],
    ['black cherry', 3.7, 7.1],
    ['hard maple', 4.8, 9.9],
    ['sweetgum', 5.3, 10.2],
    ['black walnut', 5.5, 7.8],
    ['yellow-poplar', 4.6, 8.2],
    ['Douglas-fir', 4.8, 7.6],
    ['western redcedar', 2.4, 5, 'low'],
    ['incense cedar', 3.3, 5.2],
    ['yellow cedar', 2.8, 6],
    ['eastern redcedar', 3.1, 4.7],
    ['white fir', 3.3, 7],
    ['western hemlock', 4.2, 7.8],
    ['western larch', 4.5, 9.1],
    ['loblolly pine', 4.8, 7.4],
    ['longleaf pine', 5.1, 7.5],
    ['lodgepole pine', 4.3, 6.7],
    ['Engelmann spruce', 3.8, 7.1],
    // From memory from here on, or not checked against the page itself.
    ['quaking aspen', 3.5, 6.7],
    ['butternut', 3.4, 6.4],
    ['American elm', 4.2, 9.5],
    ['hackberry', 4.8, 8.9],
    ['pecan hickory', 4.9, 8.9],
    ['eastern white pine', 2.1, 6.1],
    ['ponderosa pine', 3.9, 6.2],
    ['sugar pine', 2.9, 5.6],
    ['western white pine', 4.1, 7.4],
    ['Sitka spruce', 4.3, 7.5],
    ['redwood', 2.6, 4.4, 'low'],
  ];

  const coefficient = (shrinkage: number, low: boolean): number =>
    low ? shrinkage / (2200 - 12 * shrinkage) : shrinkage / (3000 - 20 * shrinkage);

  describe.each(FILES)('of %s', (file) => {
    const { species } = readStandard(file);

    test.for(SHRINKAGE)(
      '%s moves by what its shrinkage says, to 5 decimals',
      ([name, radial, tangential, low]) => {
        const own = species[name];
        expect(own?.radial.value).toBe(Number(coefficient(radial, low === 'low').toFixed(5)));
        expect(own?.tangential.value).toBe(Number(coefficient(tangential, low === 'low').toFixed(5)));
      },
    );

    test('all move more along the rings than across them', () => {
      for (const { radial, tangential } of Object.values(species)) {
        expect(tangential.value).toBeGreaterThan(radial.value);
      }
    });

    test('those that the Handbook tells from memory say so', () => {
      // The half of Table 13-5 with the softwoods was not seen, but for the worked example of white fir.
      const sources = Object.entries(species).flatMap(([name, { softwood, radial, tangential }]) => {
        if (!softwood && name !== 'yellow-poplar') return [];
        return name === 'white fir' ? [tangential.source] : [radial.source, tangential.source];
      });
      expect(sources.length).toBeGreaterThan(30);
      expect(sources.filter((source) => !source.includes('from memory'))).toEqual([]);
    });
  });

  test('sycamore is one unit of the last place off the rule, as the table prints it', () => {
    // Wood Handbook GTR-190, Table 13-5: 0.00296; the rule with the 8.4 % of Table 4-3 gives 0.002966.
    const { species } = readStandard(FILES[0]);
    expect(species['American sycamore']?.radial.value).toBe(Number(coefficient(5, false).toFixed(5)));
    expect(species['American sycamore']?.tangential.value).toBe(0.00296);
  });
});

describe('screws', () => {
  // Wood Handbook GTR-282, Table 8-9: diameters in mm by the screw's number.
  const HANDBOOK: Readonly<Record<number, number>> = { 6: 3.51, 8: 4.17 };
  // NDS Appendix, Table L3, root diameters in inches, from memory.
  const ROOTS: Readonly<Record<number, number>> = { 6: 0.113, 8: 0.131 };
  // ASME B18.6.4-1998, pan heads, largest and smallest diameters in inches.
  const PAN: Readonly<Record<number, readonly [number, number]>> = { 6: [0.27, 0.256], 8: [0.322, 0.306] };

  describe.each(FILES)('of %s', (file) => {
    const { stock, bits } = readStandard(file).fastening;

    test.each(stock.map((screw) => [screw.name, screw] as const))(
      '%s has the sizes of its number',
      (_, screw) => {
        const { gauge, head, diameter, root, headDiameter } = screw;
        // ASME B18.6.1, as a public list of screws quotes it: D = 0.060 in + 0.013 in for each number.
        expect(diameter.value).toBeCloseTo((0.06 + 0.013 * gauge) * INCH, 9);
        expect(diameter.value).toBeCloseTo(HANDBOOK[gauge] ?? 0, 2);
        expect(root.value).toBeCloseTo((ROOTS[gauge] ?? 0) * INCH, 9);
        if (head === 'pan') {
          const [largest, smallest] = PAN[gauge] ?? [0, 0];
          expect(headDiameter.value).toBeLessThanOrEqual(largest * INCH + 1e-9);
          expect(headDiameter.value).toBeGreaterThanOrEqual(smallest * INCH);
        }
      },
    );

    test('its bits are jobber drills: n/64 in, or half millimetres', () => {
      // ANSI B94.11M: fractions of n/64 in; BS 328: by 0.05 mm below 3 mm and by 0.1 mm below 14 mm.
      const step = file.startsWith('frameless') ? 0.5 : INCH / 64;
      for (const { value } of bits) expect(value / step).toBeCloseTo(Math.round(value / step), 9);
    });
  });
});

describe('the pull that screws must hold', () => {
  test.each(FILES)('of %s is 50 lb, as the pull test of the Architectural Woodwork Standards', (file) => {
    // AWS 1st ed. 2009, p. 374: 50 lb perpendicular to the pull; 50 * 0.45359237 kg * 9.80665 m/s².
    const { pull } = readStandard(file).fastening;
    expect(pull.value).toBeCloseTo(50 * 0.45359237 * 9.80665, 0);
    expect(pull.source).toContain('Architectural Woodwork Standards');
  });
});
