/** Small operations on glyphs `{ advance, strokes }`, in the source's units: capitals are 21 high. */

/** Parses `M5,1 L5,15 M5,20 L4,21 5,22` of the source: y down from 1 at the top of a capital, 22 at its foot. */
export function parseSource(d, halfAdvance) {
  const strokes = d
    .split('M')
    .filter((part) => part.trim() !== '')
    .map((part) =>
      part
        .replace('L', ' ')
        .trim()
        .split(/\s+/)
        .map((pair) => {
          const [x, y] = pair.split(',').map(Number);
          return [x, 22 - y];
        }),
    );
  return { advance: 2 * halfAdvance, strokes };
}

/** Parses `4,0 3,1 4,2 | 4,10 4,14`: y up from the baseline, strokes apart by a bar. */
export function glyph(advance, text = '') {
  const strokes = text
    .split('|')
    .filter((part) => part.trim() !== '')
    .map((part) =>
      part
        .trim()
        .split(/\s+/)
        .map((pair) => pair.split(',').map(Number)),
    );
  return { advance, strokes };
}

export const mapPoints = (source, f) => ({
  advance: source.advance,
  strokes: source.strokes.map((stroke) => stroke.map(f)),
});

export const shift = (source, dx, dy = 0) => mapPoints(source, ([x, y]) => [x + dx, y + dy]);

export const widen = (source, by) => ({ ...shift(source, by / 2), advance: source.advance + by });

/** The strokes of several glyphs in one, as wide as the first. */
export const join = (first, ...others) => ({
  advance: first.advance,
  strokes: [...first.strokes, ...others.flatMap((other) => other.strokes)],
});

/** Leaves inner points out until no segment is shorter than `least`; first and last points stay. */
export function withoutShortSegments(stroke, least) {
  const kept = [stroke[0]];
  for (const point of stroke.slice(1)) {
    if (distance(point, kept.at(-1)) >= least) kept.push(point);
  }
  const last = stroke.at(-1);
  if (kept.at(-1) !== last) {
    // The end came too close to the point before it: the end stays, that point goes.
    if (kept.length > 1) kept.pop();
    kept.push(last);
  }
  return kept;
}

const distance = ([ax, ay], [bx, by]) => Math.hypot(ax - bx, ay - by);
