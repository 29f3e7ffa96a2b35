import { describe, expect, test } from 'vitest';
import { pilotBit, pilotTarget } from '../../core/fastening/bits.ts';
import { cornerFrame, outOfFrame } from '../../core/fastening/corner-frame.ts';
import { drawerContext } from '../../core/fastening/drawer-context.ts';
import { placeProblem } from '../../core/fastening/place-problem.ts';
import { cornerSpecs } from '../../core/fastening/places.ts';
import { screwPlace } from '../../core/fastening/screw-place.ts';
import { solvePlace } from '../../core/fastening/solve-place.ts';
import { nearestMiss } from '../../core/fastening/nearest-miss.ts';
import type { ScrewPlace } from '../../core/fastening/types.ts';
import { anyCase } from './cases.ts';
import { random } from './fits.ts';
import { leastOver } from './oracle.ts';
import type { Posed } from './oracle.ts';

const CASES = 2000;

/** mm. What sampling a circle by points can miss: a driver of 28.6 mm radius by 96 points 0.015, and so on. */
const SAMPLED = 0.06;

/** Degrees by which a candidate must be straighter to speak against the smallest angle. */
const STRAIGHTER = 0.05;

function solved(seed: number) {
  const { fit, standard, screw } = anyCase(seed);
  const context = drawerContext(fit, standard);
  const specs = cornerSpecs(context, screw);
  const spec = specs[seed % specs.length];
  if (spec === undefined) throw new Error('no corner');
  const problem = placeProblem(context, screw, spec);
  const answer = solvePlace(problem);
  const place: ScrewPlace | null = answer === null ? null : screwPlace(context, screw, spec, answer, 0).place;
  const world = {
    fit,
    standard,
    screw,
    pulls: context.pullHoles.centers,
    pullRadius: context.pullHoles.diameter / 2,
    guided: {
      thickness: context.guideThickness,
      bit: pilotBit(pilotTarget(screw, context.species), standard.fastening.bits),
    },
  };
  // A screw may be in the stile and the rail of its own corner.
  const woods = context.woods.filter(
    ({ name }) =>
      name === 'slab' || name === `${spec.corner.hand} stile` || name === `${spec.corner.end} rail`,
  );
  return { context, woods, spec, problem, answer, place, world, standard };
}

/** A screw that leans by these tangents outwards from a corner. */
function posed(
  { context, spec }: Pick<ReturnType<typeof solved>, 'context' | 'spec'>,
  wood: ScrewPlace['wood'],
  entry: { readonly x: number; readonly y: number },
  side: number,
  rail: number,
): Posed {
  const size = Math.hypot(1, side, rail);
  const { corner } = spec;
  return {
    corner,
    wood,
    entry: outOfFrame(cornerFrame(context.walls, corner), entry),
    direction: {
      x: ((corner.hand === 'right' ? -1 : 1) * side) / size,
      y: ((corner.end === 'bottom' ? -1 : 1) * rail) / size,
      z: -1 / size,
    },
  };
}

describe('solvePlace', () => {
  test(`obeys every limit at every sampled point, in ${CASES} made-up drawers`, () => {
    const kinds = { straight: 0, one: 0, both: 0, none: 0 };
    for (let seed = 1; seed <= CASES; seed += 1) {
      const { place, world } = solved(seed);
      if (place === null) kinds.none += 1;
      else {
        kinds[place.lean.side > 0 && place.lean.rail > 0 ? 'both' : place.angle > 0 ? 'one' : 'straight'] +=
          1;
        const over = leastOver(world, place);
        if (over < -2e-6) expect.fail(`seed ${seed}: a point misses its limit by ${-over} mm`);
      }
    }
    // Every sort of answer was put to the test.
    expect(Math.min(...Object.values(kinds))).toBeGreaterThan(CASES / 400);
  });

  test('no candidate of a brute force is straighter, and none is possible where it says that none is', () => {
    let asked = 0;
    for (let seed = 1; seed <= CASES; seed += 1) {
      const given = solved(seed);
      const { place, spec, world, standard, woods, answer } = given;
      if (place !== null && place.smallestAngle === 0) continue;
      const draw = random(seed + 7_000_000);
      const most = Math.tan(
        (Math.min(standard.fastening.largestAngle.value, (place?.smallestAngle ?? 90) - STRAIGHTER) *
          Math.PI) /
          180,
      );
      if (most <= 0) continue;
      for (let turn = 0; turn < 150; turn += 1) {
        // Anywhere, or close to the answer or to the nearest miss, but straighter.
        const near = turn % 2 === 0;
        const wood = woods[Math.floor(draw() * woods.length)];
        const limits = given.problem.woods[0]?.limits;
        if (wood === undefined || limits === undefined) throw new Error('no wood');
        const single = place !== null && (place.lean.side === 0 || place.lean.rail === 0);
        const turned = draw() < 0.5 ? 0 : Math.PI / 2;
        const direction = place === null || !single ? draw(0, Math.PI / 2) : turned;
        const tangent = near ? most * draw(0.9, 1) : most * draw();
        const around = answer === null ? missed(given) : answer.entry;
        const entry = near
          ? { x: around.x + draw(-3, 3), y: around.y + draw(-3, 3) }
          : { x: draw(spec.from.x, Math.min(spec.to.x, spec.from.x + 90)), y: draw(spec.from.y, spec.to.y) };
        if (entry.x < spec.from.x || entry.x > spec.to.x || entry.y < spec.from.y || entry.y > spec.to.y)
          continue;
        const side = tangent * Math.cos(direction);
        const rail = tangent * Math.sin(direction);
        asked += 1;
        const over = leastOver(
          world,
          posed(given, wood.name, entry, side < 1e-12 ? 0 : side, rail < 1e-12 ? 0 : rail),
          SAMPLED,
        );
        if (over > SAMPLED) {
          expect.fail(
            `seed ${seed}: ${place === null ? 'none was found' : `smallest ${place.smallestAngle}`}, but side ${side}, rail ${rail} at ${JSON.stringify(entry)} in the ${wood.name} has ${over} mm over`,
          );
        }
      }
    }
    expect(asked).toBeGreaterThan(40_000);
  });
});

const misses = new WeakMap<object, { readonly x: number; readonly y: number }>();

function missed(given: ReturnType<typeof solved>): { readonly x: number; readonly y: number } {
  const known = misses.get(given.problem);
  if (known !== undefined) return known;
  const [wood] = given.problem.woods;
  const entry =
    (wood === undefined ? null : nearestMiss(wood.limits, given.spec.prefer)?.entry) ?? given.spec.prefer;
  misses.set(given.problem, entry);
  return entry;
}

describe('nearestMiss', () => {
  test('is below 0 where nothing is possible, and no candidate of a brute force comes nearer', () => {
    let compared = 0;
    for (let seed = 1; seed <= 700; seed += 1) {
      const given = solved(seed);
      const { problem, spec, woods, world, standard } = given;
      if (given.place !== null) continue;
      const levels = problem.woods.map(({ limits }) => nearestMiss(limits, spec.prefer)?.level ?? -Infinity);
      const level = Math.max(...levels);
      expect(level).toBeLessThan(0);
      const draw = random(seed + 9_000_000);
      const most = Math.tan((standard.fastening.largestAngle.value * Math.PI) / 180);
      for (let turn = 0; turn < 60; turn += 1) {
        const wood = woods[Math.floor(draw() * woods.length)];
        if (wood === undefined) throw new Error('no wood');
        const [tangent, direction] = [most * draw(), draw(0, Math.PI / 2)];
        const entry = { x: draw(spec.from.x, spec.to.x), y: draw(spec.from.y, spec.to.y) };
        const pose = posed(
          given,
          wood.name,
          entry,
          tangent * Math.cos(direction),
          tangent * Math.sin(direction),
        );
        // 0.25 mm is what the search leaves open. What must be beside a groove is measured along the front by
        // the solver and square to the screw by the points.
        const slant = standard.fastening.edgeMargin.value * (Math.hypot(1, tangent) - 1);
        const bar = level + 0.25 + SAMPLED + slant;
        compared += 1;
        if (leastOver(world, pose, bar) > bar)
          expect.fail(`seed ${seed}: a candidate misses by less than ${-level} mm`);
      }
    }
    expect(compared).toBeGreaterThan(3000);
  });
});
