import type { Point } from '../../../core/geometry/types.ts';
import { straight, type DrawnLine, type Stretch } from './drawn.ts';
import { popplerSvg } from './tool.ts';

const MM = 25.4 / 72;

/** The stroked lines of a page as Poppler draws them, mm from the page's lower left corner. */
export function readPoppler(pdf: Uint8Array, page: number): readonly DrawnLine[] {
  const svg = popplerSvg(pdf, page);
  const height = Number(/viewBox="0 0 [\d.]+ ([\d.]+)"/.exec(svg)?.[1]);
  return [...svg.matchAll(/<path ([^>]*stroke-width:[^>]*)\/>/g)].flatMap(([, attributes = '']) => {
    const get = (name: string) => new RegExp(`\\b${name}="([^"]*)"`).exec(attributes)?.[1] ?? '';
    const matrix = (/matrix\(([^)]*)\)/.exec(get('transform'))?.[1] ?? '1, 0, 0, 1, 0, 0')
      .split(',')
      .map(Number);
    return pathsIn(get('d'), matrix, height).map((stretches) => ({
      stretches,
      width: Number(/stroke-width:([\d.]+)/.exec(attributes)?.[1]) * MM,
      dashed: attributes.includes('stroke-dasharray'),
    }));
  });
}

function pathsIn(d: string, matrix: readonly number[], height: number): readonly (readonly Stretch[])[] {
  const [a = 1, b = 0, c = 0, e = 1, tx = 0, ty = 0] = matrix;
  const words = d.trim().split(/\s+/);
  const paths: Stretch[][] = [];
  let [start, here]: [Point, Point] = [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ];
  let at = 0;
  const take = (): Point => {
    const [x, y] = [Number(words[at]), Number(words[at + 1])];
    at += 2;
    return { x: (a * x + c * y + tx) * MM, y: (height - (b * x + e * y + ty)) * MM };
  };
  while (at < words.length) {
    const command = words[at];
    at += 1;
    if (command === 'M') {
      start = take();
      here = start;
      // Poppler moves once more after it has closed a path.
      if (at < words.length) paths.push([]);
    } else if (command === 'L') {
      const to = take();
      paths.at(-1)?.push(straight(here, to));
      here = to;
    } else if (command === 'C') {
      const [one, two, to] = [take(), take(), take()];
      paths.at(-1)?.push([here, one, two, to]);
      here = to;
    } else if (command === 'Z') {
      if (Math.hypot(here.x - start.x, here.y - start.y) > 0.003) paths.at(-1)?.push(straight(here, start));
      here = start;
    } else throw new Error(`readPoppler: an unknown path command ${command}`);
  }
  return paths.filter(({ length }) => length > 0);
}
