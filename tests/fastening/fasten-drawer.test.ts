import { describe, expect, test } from 'vitest';
import { depthStop } from '../../core/fastening/depth-stop.ts';
import { fastenDrawer } from '../../core/fastening/fasten-drawer.ts';
import { fastenOrder } from '../../core/fastening/fasten-order.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import { anyCase } from './cases.ts';
import { fitWith, INCH, mm, STANDARD, standardWith, stockScrew } from './fits.ts';

const only = (name: string) => standardWith({ stock: [stockScrew(name)] });

const FIVE_PIECE = { kind: 'five-piece', memberWidth: 2.25 * INCH } as const;

const marginOf = (fastening: ReturnType<typeof fastenDrawer>['value'], limit: string) =>
  fastening.places[0]?.margins.find((margin) => margin.limit === limit);

describe('fastenDrawer, what shops do (common practice, no source)', () => {
  test('a 1-1/4 in screw through a 5/8 in box front leaves 1/8 in of a 3/4 in slab', () => {
    const { value } = fastenDrawer(fitWith(), only('#8 x 1-1/4 in pan'));
    expect(value.places.map(({ angle }) => angle)).toEqual([0, 0, 0, 0]);
    const cover = marginOf(value, 'cover');
    expect(cover?.is).toBeCloseTo((3 / 4 + 5 / 8 - 1.25) * INCH, 9);
    expect(cover?.is).toBeGreaterThanOrEqual(INCH / 8 - 1e-9);
    expect((value.holes?.pilotDiameter ?? 0) / INCH).toBeCloseTo(7 / 64, 9);
  });

  test('a straight screw goes to the place that the standard names', () => {
    const { side, height } = STANDARD.fastening.place;
    const floor = STANDARD.box.bottom.raised.value + STANDARD.box.bottom.thickness.value;
    const { value } = fastenDrawer(fitWith(), STANDARD);
    for (const { corner, fromSide, fromEnd } of value.places) {
      expect(fromSide).toBe(side.value);
      expect(fromEnd).toBeCloseTo(corner.end === 'bottom' ? floor + height.value : height.value, 9);
    }
  });

  test('with a 1-7/16 in overhang, a 2-1/4 in stile and 5/8 in box sides it goes in at an angle, close into the corner', () => {
    const { value } = fastenDrawer(fitWith({ drawer: { front: FIVE_PIECE } }), STANDARD);
    expect(value.screw).not.toBeNull();
    const corners = value.places.filter(({ index }) => index === 0);
    expect(corners).toHaveLength(4);
    for (const { angle, smallestAngle, lean, wood, corner, fromSide, active } of corners) {
      expect(angle).toBeGreaterThan(5);
      expect(smallestAngle).toBeLessThanOrEqual(angle + 1e-9);
      expect(angle).toBe(Math.round(angle * 1e6) / 1e6);
      expect(lean.side).toBeGreaterThan(0);
      expect(wood).toBe(`${corner.hand} stile`);
      expect(fromSide).toBeLessThan(INCH / 2);
      expect(active.length).toBeGreaterThan(0);
    }
  });

  test('a straight screw is refused there: the box side leaves its head less room than the stile leaves its thread', () => {
    const standard = standardWith({ largestAngle: mm(1) });
    const { value, findings } = fastenDrawer(fitWith({ drawer: { front: FIVE_PIECE } }), standard);
    expect(value.screw).toBeNull();
    expect(value.places).toEqual([]);
    expect(value.impossible.map(({ index }) => index)).toEqual([0, 0, 0, 0]);
    const [first] = value.impossible;
    expect(first?.margins[0]?.over).toBeLessThan(0);
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([['fastening/none', 'warning']]);
    // The inner face of the box side is 52.3875 mm from the front's edge, the inner edge of the stile 57.15 mm.
    expect(2.25 * INCH - 36.5125 - 15.875).toBeLessThan(STANDARD.fastening.headRoom.value + 4);
  });

  test('its cures cure: a stile as much wider as it says lets the same screw in, and one step less does not', () => {
    const standard = standardWith({ largestAngle: mm(20), stock: [stockScrew('#8 x 1-1/4 in pan')] });
    const wide = (front: DrawerFit['drawer']['front']) =>
      fastenDrawer(fitWith({ boxW: 200, boxH: 140, drawer: { front } }), standard).value;
    const cures = wide(FIVE_PIECE).impossible[0]?.cures ?? [];
    const cure = cures
      .map((text) => /^A stile (\d+)(?:\/(\d+))?" wider would do\.$/.exec(text))
      .find(Boolean);
    if (cure === null || cure === undefined) throw new Error(`no such cure in ${JSON.stringify(cures)}`);
    const by = (Number(cure[1]) / Number(cure[2] ?? 1)) * INCH;
    const at = (more: number) =>
      wide({ ...FIVE_PIECE, railWidth: FIVE_PIECE.memberWidth, memberWidth: FIVE_PIECE.memberWidth + more });
    expect(at(by).screw).not.toBeNull();
    expect(at(by - INCH / 16).screw).toBeNull();
  });
});

describe('fastenDrawer, the driver', () => {
  const CHUCK = [{ name: 'chuck', radius: mm(40), length: mm(150) }];

  test('a chuck of 40 mm radius cannot turn a straight screw 38 mm from the side: it moves out of reach of the side', () => {
    const standard = standardWith({ driver: CHUCK, stock: [stockScrew('#8 x 1-1/4 in pan')] });
    const { value } = fastenDrawer(fitWith({ boxH: 260 }), standard);
    for (const { fromSide } of value.places) {
      expect(fromSide).toBeGreaterThanOrEqual(40 + standard.fastening.driverRoom.value - 1e-6);
      expect(fromSide).toBeLessThanOrEqual(40 + standard.fastening.driverRoom.value + 0.5);
    }
  });

  test('a driver that is longer than the box is deep is against its back', () => {
    const standard = standardWith({ driver: [{ name: 'driver', radius: mm(10), length: mm(240) }] });
    const fits = (boxD: number) => fastenDrawer(fitWith({ drawer: { boxD } }), standard).value;
    // Box front, driver, its room, the back as thick as a side.
    const least = 15.875 + 240 + standard.fastening.driverRoom.value + 15.875;
    expect(fits(least + 0.01).screw).not.toBeNull();
    expect(fits(least - 1).places.every(({ angle }) => angle > 0)).toBe(true);
  });
});

describe('fastenDrawer, pulls', () => {
  // Holes of a bar that stand right where the corner screws would: 1-1/2 in from the inside of the box.
  const centers = 300 - 2 * (15.875 + STANDARD.fastening.place.side.value);
  const fit = fitWith({
    boxH: 110,
    overhang: { left: 36.5125, right: 36.5125, bottom: 0, top: 0 },
    drawer: { pullChoice: { sort: 'bar', centers } },
  });

  test('a screw keeps its room from a pull hole, and the margin says how much there is', () => {
    const standard = standardWith({ pullRoom: mm(12) });
    const { value } = fastenDrawer(fit, standard);
    expect(value.pullHoles.centers).toHaveLength(2);
    expect(value.places.length).toBeGreaterThanOrEqual(4);
    const moved = fastenDrawer(
      { ...fit, drawer: { ...fit.drawer, pullChoice: { sort: 'bar', centers: 64 } } },
      standard,
    );
    expect(value.places.map(({ entry }) => entry)).not.toEqual(moved.value.places.map(({ entry }) => entry));
    for (const { entry, margins, angle } of value.places) {
      const margin = margins.find(({ limit }) => limit === 'pull hole');
      expect(margin?.over).toBeGreaterThanOrEqual(-1e-6);
      if (angle > 0) continue;
      const away = Math.min(
        ...value.pullHoles.centers.map(({ x, y }) => Math.hypot(entry.x - x, entry.y - y)),
      );
      const radii = ((value.screw?.diameter.value ?? 0) + value.pullHoles.diameter) / 2;
      expect(margin?.is).toBeCloseTo(away - radii, 9);
    }
  });

  test('pulls are at half the width, two at its quarters, half way up or so far below the top', () => {
    const at = (frontW: number, sort: string) => {
      const choice = { ...fit, frontW, drawer: { ...fit.drawer, pullChoice: { sort } } };
      return fastenDrawer(choice, {
        ...STANDARD,
        pulls: {
          knob: {
            holes: 1,
            centers: mm(0),
            holeDiameter: mm(5),
            height: { from: 'top', distance: mm(30) },
            pairFrom: mm(700),
          },
          bar: {
            holes: 2,
            centers: mm(96),
            holeDiameter: mm(5),
            height: { from: 'middle', distance: mm(0) },
            pairFrom: mm(700),
          },
        },
      }).value.pullHoles.centers;
    };
    expect(at(600, 'knob')).toEqual([{ x: 300, y: fit.frontH - 30 }]);
    expect(at(800, 'bar').map(({ x }) => x)).toEqual([152, 248, 552, 648]);
    expect(at(800, 'bar').every(({ y }) => y === fit.frontH / 2)).toBe(true);
    expect(at(800, 'handle')).toEqual([]);
  });
});

describe('fastenDrawer, rows and columns', () => {
  test('no two neighbours of a row or of a side are further apart than the spacing', () => {
    const spacing = STANDARD.fastening.spacing.value;
    for (const boxW of [300, 420, 680, 760, 1000, 1340]) {
      const { value } = fastenDrawer(fitWith({ boxW, boxH: 420 }), STANDARD);
      expect(value.impossible).toEqual([]);
      const sorted = (values: readonly number[]) => values.toSorted((a, b) => a - b);
      const steps = (values: readonly number[]) =>
        sorted(values)
          .slice(1)
          .map((v, i) => v - (sorted(values)[i] ?? 0));
      for (const end of ['bottom', 'top'] as const) {
        const row = value.places.filter(({ corner, along }) => corner.end === end && along === 'end');
        const gaps = steps(row.map(({ entry }) => entry.x));
        expect(Math.max(...gaps)).toBeLessThanOrEqual(spacing + 1e-6);
        // A driver has room between them.
        expect(Math.min(...gaps)).toBeGreaterThan(30);
      }
      for (const hand of ['left', 'right'] as const) {
        const side = value.places.filter(
          ({ corner, along, index }) => corner.hand === hand && (along === 'side' || index === 0),
        );
        expect(side.length).toBeGreaterThan(2);
        expect(Math.max(...steps(side.map(({ entry }) => entry.y)))).toBeLessThanOrEqual(spacing + 1e-6);
      }
    }
  });
});

describe('fastenDrawer, holes', () => {
  test('a fully threaded screw gets a clearance hole, whatever the standard says, and says why', () => {
    const standard = standardWith({ holes: { value: 'pilot through both', source: 'test' } });
    const { value } = fastenDrawer(fitWith(), standard);
    expect(value.holes?.plan).toBe('clearance in the box front');
    expect(value.holes?.why).toMatch(/hold the joint open/);
    expect(value.holes?.clearanceDiameter).toBeGreaterThanOrEqual(value.screw?.diameter.value ?? Infinity);
  });

  test('one whose thread is all in the front gets a pilot through both', () => {
    const screw = { ...stockScrew('#8 x 1-1/4 in pan'), thread: mm(12) };
    const standard = standardWith({ stock: [screw], holes: { value: 'pilot through both', source: 'test' } });
    const { value } = fastenDrawer(fitWith(), standard);
    expect(value.holes?.plan).toBe('pilot through both');
    expect(value.holes?.clearanceDiameter).toBe(0);
  });

  test('depthStop is guide and screw along the bore, so that the drill ends at the tip and keeps the cover', () => {
    const { value } = fastenDrawer(fitWith({ drawer: { front: FIVE_PIECE } }), STANDARD);
    const { holes, screw, fit } = value;
    if (holes === null || screw === null) throw new Error('no screw');
    for (const place of value.places) {
      const stop = depthStop(place, holes, fit, 18);
      const end = fit.boxFront + 18 + stop * place.direction.z;
      // The plate lies on the inside of the box front: the bore starts 18 mm above it.
      expect(end).toBeCloseTo(fit.boxFront + screw.length.value * place.direction.z, 9);
      expect(end + fit.frontThickness).toBeGreaterThan(STANDARD.fastening.cover.value);
      expect(place.pilotDepth).toBeCloseTo(stop - (18 + fit.boxFront) / -place.direction.z, 9);
    }
  });
});

describe('fastenDrawer, withdrawal', () => {
  test('adds up all screws over the safety, and warns below what the standard asks for', () => {
    const { value } = fastenDrawer(fitWith(), only('#8 x 1-1/4 in pan'));
    // 108.25 G² D L: hard maple G 0.63, 4 screws of 0.164 in with 5/8 in of thread in the front.
    const one = 108.25 * 0.63 ** 2 * (0.164 * INCH) * ((5 / 8) * INCH);
    expect(value.withdrawal.capacity).toBeCloseTo((4 * one) / STANDARD.fastening.safety.value, 6);
    const weak = fastenDrawer(fitWith(), standardWith({ pull: mm(1e5) }));
    expect(weak.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ['fastening/withdrawal', 'warning'],
    ]);
    expect(weak.value.places).toHaveLength(4);
  });

  test('a wood that the standard does not know is reckoned as its lightest, and said', () => {
    const { findings } = fastenDrawer(fitWith({ drawer: { species: 'driftwood' } }), STANDARD);
    expect(findings.map(({ code }) => code)).toEqual(['fastening/species']);
  });
});

describe('fastenDrawer, mirrored', () => {
  test('a drawer turned left for right has its screws turned left for right', () => {
    let screws = 0;
    for (let seed = 1; seed <= 30; seed += 1) {
      const { fit, standard } = anyCase(seed);
      const turned: DrawerFit = {
        ...fit,
        overhang: { ...fit.overhang, left: fit.overhang.right, right: fit.overhang.left },
      };
      const key = (
        { corner, index, along }: { corner: { hand: string; end: string }; index: number; along: string },
        turn: boolean,
      ) => `${turn === (corner.hand === 'left') ? 'right' : 'left'} ${corner.end} ${along} ${index}`;
      const places = (of: DrawerFit, turn: boolean) =>
        fastenDrawer(of, standard)
          .value.places.map((place) => ({
            key: key(place, turn),
            x: turn ? of.frontW - place.entry.x : place.entry.x,
            y: place.entry.y,
            side: place.lean.side,
            rail: place.lean.rail,
            dx: turn ? -place.direction.x : place.direction.x,
          }))
          .toSorted((a, b) => (a.key < b.key ? -1 : 1));
      const [plain, back] = [places(fit, false), places(turned, true)];
      expect(back.map((place) => place.key)).toEqual(plain.map((place) => place.key));
      plain.forEach((place, index) => {
        screws += 1;
        for (const name of ['x', 'y', 'side', 'rail', 'dx'] as const) {
          expect(Math.abs((back[index]?.[name] ?? NaN) - place[name]), `seed ${seed} ${name}`).toBeLessThan(
            1e-5,
          );
        }
      });
    }
    expect(screws).toBeGreaterThan(30);
  });
});

describe('fastenOrder', () => {
  test('gives each fit what fastenDrawer gives it, in their order, alike ones too', () => {
    const fits = [fitWith(), fitWith({ drawer: { front: FIVE_PIECE } }), fitWith({ drawer: { row: 9 } })];
    const { value, findings } = fastenOrder(fits, STANDARD);
    const single = fits.map((fit) => fastenDrawer(fit, STANDARD));
    expect(value).toEqual(single.map((one) => one.value));
    expect(findings).toEqual(single.flatMap((one) => one.findings));
  });
});
