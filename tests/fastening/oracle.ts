import type { DrawerFit } from '../../core/fit/types.ts';
import type { StockScrew } from '../../core/rules/fastening-types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { Corner, ScrewPlace } from '../../core/fastening/types.ts';

/**
 * Whether a screw may be where it is, told by points: screw, head and driver are sampled and each point is asked
 * where it is. Written apart from the solver, which never looks at a point: back view throughout, no frame of a
 * corner, distances from the parts of the front and of the box as they stand.
 */
export interface Posed {
  readonly corner: Corner;
  readonly entry: { readonly x: number; readonly y: number };
  readonly direction: ScrewPlace['direction'];
  readonly wood: ScrewPlace['wood'];
}

interface Vec {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

interface World {
  readonly fit: DrawerFit;
  readonly standard: ShopStandard;
  readonly screw: StockScrew;
  readonly pulls: readonly { readonly x: number; readonly y: number }[];
  readonly pullRadius: number;
  /** Of the guided bore, mm. */
  readonly guided: { readonly thickness: number; readonly bit: number };
}

/**
 * The least that any sampled limit has over what must be, mm, or the first value below `stop`: then no further
 * point is asked.
 */
export function leastOver(world: World, posed: Posed, stop = -Infinity): number {
  let least = Infinity;
  for (const over of overs(world, posed)) {
    least = Math.min(least, over);
    if (least < stop) return least;
  }
  return least;
}

function* overs(world: World, posed: Posed): Generator<number> {
  const { fit, standard, screw, pulls, pullRadius, guided } = world;
  const rule = standard.fastening;
  const { direction: d, entry } = posed;
  const start: Vec = { x: entry.x, y: entry.y, z: fit.boxFront };
  const length = screw.length.value;
  const radius = screw.diameter.value / 2;
  const tilt = Math.acos(Math.min(1, -d.z));
  yield ((rule.largestAngle.value - (tilt * 180) / Math.PI) * Math.PI) / 180;

  // Bite: how much of the axis is below the back of the front.
  yield length - fit.boxFront / -d.z - rule.bite.value;
  yield (
    guided.thickness / Math.cos(tilt) -
    (guided.bit + rule.guide.boreFit.value) * Math.tan(tilt) -
    rule.guide.boreLength.value * guided.bit
  );

  const box = boxOf(world);
  const thick = Math.min(fit.frontThickness, fit.drawer.front.thinnest ?? Infinity);
  for (const round of circle(d, radius, 24)) {
    // Where this line of the cylinder's side meets the back of the front, and on to the tip and to the head.
    const toBack = -(start.z + round.z) / d.z;
    for (const along of [
      length,
      toBack + 1e-9,
      toBack - 1e-9,
      0,
      toBack / 2,
      (toBack + length) / 2,
      toBack - standard.front.groove.behind.value / d.z + 1e-9,
      toBack + 6,
      toBack + 9,
    ]) {
      if (along < -1e-9 || along > length + 1e-9) continue;
      const p = at(start, d, along, round);
      if (p.z < 0) {
        yield p.z + thick - rule.cover.value;
        yield woodDistance(world, posed.wood, p) - rule.edgeMargin.value;
        yield grooveDistance(world, posed.wood, p) - rule.edgeMargin.value;
      } else {
        yield (
          Math.min(p.x - box.right, box.left - p.x, p.y - box.low, box.high - p.y) - rule.edgeMargin.value
        );
      }
      for (const pull of pulls)
        yield Math.hypot(p.x - pull.x, p.y - pull.y) - pullRadius - rule.pullRoom.value;
    }
  }
  const inside = (p: Vec): number =>
    Math.min(p.x - box.right - fit.boxSide, box.left - fit.boxSide - p.x, p.y - box.floor);
  for (const round of circle(d, screw.headDiameter.value / 2, 48)) {
    const p = at(start, d, 0, round);
    yield Math.min(inside(p), box.high - p.y) - rule.headRoom.value;
  }
  let from = 0;
  for (const { radius: wide, length: long } of rule.driver) {
    for (const round of circle(d, wide.value, 96)) {
      for (const along of [from, from + long.value / 2, from + long.value]) {
        const p = at(start, d, -along, round);
        yield Math.min(inside(p), box.back - p.z) - rule.driverRoom.value;
      }
    }
    from += long.value;
  }
}

const at = (start: Vec, d: Vec, along: number, off: Vec): Vec => ({
  x: start.x + along * d.x + off.x,
  y: start.y + along * d.y + off.y,
  z: start.z + along * d.z + off.z,
});

/** Points about the origin on a circle square to a direction. */
function circle(d: Vec, radius: number, count: number): readonly Vec[] {
  // Any direction square to d, and the one square to both: the back view's x never is along a screw.
  const dot = d.x;
  const raw = { x: 1 - dot * d.x, y: -dot * d.y, z: -dot * d.z };
  const size = Math.hypot(raw.x, raw.y, raw.z);
  const u = { x: raw.x / size, y: raw.y / size, z: raw.z / size };
  const v = { x: d.y * u.z - d.z * u.y, y: d.z * u.x - d.x * u.z, z: d.x * u.y - d.y * u.x };
  return Array.from({ length: count }, (_, index) => {
    const turn = (2 * Math.PI * index) / count;
    const [c, s] = [radius * Math.cos(turn), radius * Math.sin(turn)];
    return { x: c * u.x + s * v.x, y: c * u.y + s * v.y, z: c * u.z + s * v.z };
  });
}

function boxOf({ fit, standard }: World) {
  // Left over width of the front is shared out evenly.
  const rest = fit.frontW - fit.overhang.left - fit.boxW - fit.overhang.right;
  const right = fit.overhang.right + rest / 2;
  const low = fit.overhang.bottom;
  return {
    right,
    left: right + fit.boxW,
    low,
    high: low + fit.boxH,
    floor: low + standard.box.bottom.raised.value + standard.box.bottom.thickness.value,
    back: (fit.drawer.boxD ?? standard.box.depth.value) - fit.boxSide,
  };
}

/** How far a point is inside a piece of the front, seen from the back. */
function woodDistance({ fit }: World, wood: Posed['wood'], { x, y }: Vec): number {
  const { frontW: w, frontH: h } = fit;
  const inset = fit.frontThickness * Math.tan((fit.rules.backBevel.value * Math.PI) / 180);
  const whole = Math.min(x - inset, w - inset - x, y - inset, h - inset - y);
  const { front } = fit.drawer;
  if (front.kind === 'slab') return whole;
  const m = front.memberWidth;
  const r = front.railWidth ?? m;
  // The back's edges that the piece has, its inner edge, and its joints.
  const fromSide = Math.min(x, w - x);
  const fromEnd = Math.min(y, h - y);
  const mitre = (fromEnd * m - fromSide * r) / Math.hypot(m, r);
  const stile = wood.endsWith('stile');
  const own = { 'right stile': x, 'left stile': w - x, 'bottom rail': y, 'top rail': h - y, slab: 0 }[wood];
  const inner = (stile ? m : r) - own;
  if (front.joint === 'mitre') return Math.min(whole, inner, stile ? mitre : -mitre);
  return stile ? Math.min(whole, inner) : Math.min(whole, inner, fromSide - m);
}

/** How far a point is from the groove, or below 0 how far across the front it is inside, that runs along the inner edge of a stile or rail. */
function grooveDistance({ fit, standard }: World, wood: Posed['wood'], { x, y, z }: Vec): number {
  const { front } = fit.drawer;
  if (front.kind === 'slab' || wood === 'slab') return Infinity;
  const { depth, behind, width } = standard.front.groove;
  const r = front.railWidth ?? front.memberWidth;
  const own = {
    'right stile': front.memberWidth - x,
    'left stile': front.memberWidth - (fit.frontW - x),
    'bottom rail': r - y,
    'top rail': r - (fit.frontH - y),
  }[wood];
  const aside = Math.max(0, own - depth.value);
  const above = Math.max(0, z + behind.value, -behind.value - width.value - z);
  return aside === 0 && above === 0 ? own - depth.value : Math.hypot(aside, above);
}
