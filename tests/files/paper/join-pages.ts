import type { Point } from '../../../core/geometry/types.ts';
import { singles, type DrawnLine, type Stretch } from './drawn.ts';
import type { ReadPage } from './read-pdfjs.ts';

/** A page laid where it belongs among its neighbours. */
export interface JoinedPage {
  readonly label: string;
  readonly lines: readonly DrawnLine[];
}

/** mm. Arms of the match crosses: two lines of 6 mm over one another. */
const CROSS = 6;

/**
 * Lays the pages of a template together by nothing but what is printed on them: each names the pages that it
 * joins, and a pair is shifted until the crosses on both sides of their overlap cover one another. What is
 * returned is measured on the printed paper, so the printer's factors are divided out.
 */
export function joinPages(pages: readonly ReadPage[], overlap: number, scale: Point): readonly JoinedPage[] {
  const printed = pages.map((page) => ({ page, lines: page.lines.map((line) => scaled(line, scale)) }));
  const [first] = printed;
  if (first === undefined) return [];
  const placed = new Map<string, { readonly at: Point; readonly lines: readonly DrawnLine[] }>();
  placed.set(first.page.label, { at: { x: 0, y: 0 }, lines: first.lines });
  const waiting = [first];
  for (let here = waiting.shift(); here !== undefined; here = waiting.shift()) {
    const at = placed.get(here.page.label)?.at ?? { x: 0, y: 0 };
    for (const next of printed) {
      const side = sideOf(here.page, next.page.label, scale);
      if (side === null || placed.has(next.page.label)) continue;
      const off = shift(crosses(here.lines), crosses(next.lines), side, overlap);
      placed.set(next.page.label, { at: { x: at.x + off.x, y: at.y + off.y }, lines: next.lines });
      waiting.push(next);
    }
  }
  return [...placed].map(([label, { at, lines }]) => ({
    label,
    lines: lines.map((line) => ({ ...line, stretches: line.stretches.map((one) => movedBy(one, at)) })),
  }));
}

type Side = 'left' | 'right' | 'above' | 'below';

/** At which side of a page its words name another page. */
function sideOf(page: ReadPage, label: string, scale: Point): Side | null {
  const found = page.texts.find(({ text }) => text === `joins ${label}`);
  if (found === undefined) return null;
  const [x, y] = [found.box.x / scale.x, found.box.y / scale.y];
  const [w, h] = [page.width / scale.x, page.height / scale.y];
  if (x < 25) return 'left';
  if (x > w - 20) return 'right';
  return y > h / 2 ? 'above' : 'below';
}

/** How the next page is moved so that its crosses at the overlap lie on this page's. */
function shift(here: readonly Point[], next: readonly Point[], side: Side, overlap: number): Point {
  const least = (points: readonly Point[], of: (point: Point) => number) => Math.min(...points.map(of));
  const most = (points: readonly Point[], of: (point: Point) => number) => Math.max(...points.map(of));
  const x = (point: Point) => point.x;
  const y = (point: Point) => point.y;
  const [hx, hy] = [most(here, x), most(here, y)];
  const moves: Readonly<Record<Side, Point>> = {
    right: { x: hx - overlap - least(next, x), y: most(here, y) - most(next, y) },
    left: { x: least(here, x) + overlap - most(next, x), y: most(here, y) - most(next, y) },
    above: { x: most(here, x) - most(next, x), y: hy - overlap - least(next, y) },
    below: { x: most(here, x) - most(next, x), y: least(here, y) + overlap - most(next, y) },
  };
  const move = moves[side];
  const covered = next.filter((one) =>
    here.some((other) => Math.hypot(one.x + move.x - other.x, one.y + move.y - other.y) < 0.005),
  );
  if (covered.length < 4) throw new Error(`joinPages: only ${covered.length} crosses cover one another`);
  return move;
}

/** Middles of the crosses: a level and an upright line of their length with one middle. */
function crosses(lines: readonly DrawnLine[]): readonly Point[] {
  const arms = singles(lines).filter(
    ([a, , , d]) => Math.abs(Math.hypot(d.x - a.x, d.y - a.y) - CROSS) < 0.02,
  );
  const middles = arms.map(([a, , , d]) => ({
    x: (a.x + d.x) / 2,
    y: (a.y + d.y) / 2,
    level: Math.abs(a.y - d.y) < 0.01,
  }));
  return middles.filter(
    (one) =>
      one.level &&
      middles.some((other) => !other.level && Math.hypot(other.x - one.x, other.y - one.y) < 0.01),
  );
}

const scaled = (line: DrawnLine, { x, y }: Point): DrawnLine => ({
  ...line,
  stretches: line.stretches.map((one) => map(one, (point) => ({ x: point.x / x, y: point.y / y }))),
});

const movedBy = (stretch: Stretch, by: Point): Stretch =>
  map(stretch, ({ x, y }) => ({ x: x + by.x, y: y + by.y }));

const map = ([a, b, c, d]: Stretch, of: (point: Point) => Point): Stretch => [of(a), of(b), of(c), of(d)];
