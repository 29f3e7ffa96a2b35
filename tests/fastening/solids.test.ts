import Module from 'manifold-3d';
import type { Manifold, SimplePolygon } from 'manifold-3d';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fastenDrawer } from '../../core/fastening/fasten-drawer.ts';
import { fastenOrder } from '../../core/fastening/fasten-order.ts';
import type { Fastening, ScrewPlace } from '../../core/fastening/types.ts';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { readStandard } from '../rules/read-standard.ts';
import { anyCase } from './cases.ts';
import { fitWith } from './fits.ts';

const library = await Module();
library.setup();
const { Manifold: Solids } = library;

const prism = (outline: SimplePolygon, from: number, to: number): Manifold =>
  Solids.extrude([outline], to - from).translate([0, 0, from]);

/** The piece of the front that a screw is said to be in, less the groove for the panel. */
function allowedWood(
  { fit }: Fastening,
  { groove }: ShopStandard['front'],
  wood: ScrewPlace['wood'],
): Manifold {
  const { frontW: w, frontH: h, frontThickness: t, drawer } = fit;
  const inset = t * Math.tan((fit.rules.backBevel.value * Math.PI) / 180);
  const rectangle = (by: number): [number, number][] => [
    [by, by],
    [w - by, by],
    [w - by, h - by],
    [by, h - by],
  ];
  const whole = Solids.hull([
    ...rectangle(0).map(([x, y]): [number, number, number] => [x, y, -t]),
    ...rectangle(inset).map(([x, y]): [number, number, number] => [x, y, 0]),
  ]);
  const { front } = drawer;
  if (front.kind === 'slab') return whole;
  const m = front.memberWidth;
  const r = front.railWidth ?? m;
  const mitred = front.joint === 'mitre';
  const stile = (by: number): SimplePolygon =>
    mitred
      ? [
          [0, 0],
          [m - by, r - (by * r) / m],
          [m - by, h - r + (by * r) / m],
          [0, h],
        ]
      : [
          [0, 0],
          [m - by, 0],
          [m - by, h],
          [0, h],
        ];
  const rail = (by: number): SimplePolygon =>
    mitred
      ? [
          [0, 0],
          [w, 0],
          [w - m + (by * m) / r, r - by],
          [m - (by * m) / r, r - by],
        ]
      : [
          [m, 0],
          [w - m, 0],
          [w - m, r - by],
          [m, r - by],
        ];
  const shape = wood.endsWith('stile') ? stile : rail;
  const grooved = Solids.difference(
    prism(shape(0), -t, 0),
    Solids.difference(
      prism(shape(0), -groove.behind.value - groove.width.value, -groove.behind.value),
      prism(shape(groove.depth.value), -t, 0),
    ),
  );
  const turned =
    wood === 'left stile'
      ? grooved.mirror([1, 0, 0]).translate([w, 0, 0])
      : wood === 'top rail'
        ? grooved.mirror([0, 1, 0]).translate([0, h, 0])
        : grooved;
  return Solids.intersection(turned, whole);
}

/** The part of a screw that is below the back of the front. */
function screwInFront({ fit, screw }: Fastening, { entry, direction: d }: ScrewPlace): Manifold {
  if (screw === null) throw new Error('no screw');
  const cylinder = Solids.cylinder(
    screw.length.value,
    screw.diameter.value / 2,
    screw.diameter.value / 2,
    48,
  );
  // The library's cylinders stand up along z.
  const tilt = (Math.acos(Math.max(-1, Math.min(1, d.z))) * 180) / Math.PI;
  const turn = (Math.atan2(d.y, d.x) * 180) / Math.PI;
  return cylinder
    .rotate([0, tilt, 0])
    .rotate([0, 0, turn])
    .translate([entry.x, entry.y, fit.boxFront])
    .trimByPlane([0, 0, -1], 0);
}

function checkSolids(fastening: Fastening, standard: ShopStandard): number {
  for (const place of fastening.places) {
    const screw = screwInFront(fastening, place);
    expect(screw.volume()).toBeGreaterThan(10);
    const outside = Solids.difference(screw, allowedWood(fastening, standard.front, place.wood)).volume();
    if (outside > 1e-4)
      expect.fail(`${outside} mm³ of a screw is outside its wood: ${JSON.stringify(place)}`);
  }
  return fastening.places.length;
}

describe('fastenOrder, as solids', () => {
  test.for([
    ['harbor-library.csv', 'face-frame-undermount.json'],
    ['harbor-library.csv', 'face-frame-side-mount.json'],
    ['boathouse-frameless.csv', 'frameless-undermount.json'],
  ] as const)('%s with %s: no screw leaves its wood, nor meets the groove', ([order, file]) => {
    const standard = readStandard(file);
    const text = readFileSync(new URL(`../../assets/orders/${order}`, import.meta.url), 'utf8');
    const read = readOrderCsv(text, { file: order, name: order, unit: standard.unit, standard });
    const { value } = fastenOrder(fitOrder(read.value, standard).value, standard);
    const screws = value.reduce((sum, fastening) => sum + checkSolids(fastening, standard), 0);
    expect(screws).toBeGreaterThan(20);
  });

  test('nor does one of a made-up drawer', () => {
    let leaning = 0;
    for (let seed = 1; seed <= 120; seed += 1) {
      const { fit, standard, screw } = anyCase(seed);
      const one = { ...standard, fastening: { ...standard.fastening, stock: [screw] } };
      const { value } = fastenDrawer(fit, one);
      checkSolids(value, one);
      leaning += value.places.filter(({ angle }) => angle > 0).length;
    }
    expect(leaning).toBeGreaterThan(10);
  });

  test('a screw that is moved out of its wood would be found', () => {
    const standard = readStandard('face-frame-undermount.json');
    const { value } = fastenDrawer(fitWith(), standard);
    const [place] = value.places;
    if (place === undefined) throw new Error('no screw');
    const outside = (x: number): number => {
      const screw = screwInFront(value, { ...place, entry: { x, y: place.entry.y } });
      return Solids.difference(screw, allowedWood(value, standard.front, place.wood)).volume();
    };
    expect(outside(place.entry.x)).toBeLessThan(1e-4);
    expect(outside(0)).toBeGreaterThan(10);
  });
});
