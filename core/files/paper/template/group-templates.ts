import { sameLength, SAME_OVERHANG } from '../../../units/tolerances.ts';
import { screwPoints } from './screw-points.ts';
import { templateGeometry } from './template-geometry.ts';
import type { Template, TemplateSource } from './types.ts';

/** The templates of an order: drawers whose templates would be the same to 0.001 mm share one. */
export function groupTemplates(sources: readonly TemplateSource[]): readonly Template[] {
  const groups: { readonly numbers: readonly number[]; readonly sources: TemplateSource[] }[] = [];
  for (const source of sources) {
    const numbers = shownNumbers(source);
    const group = groups.find((known) => same(known.numbers, numbers));
    if (group === undefined) groups.push({ numbers, sources: [source] });
    else group.sources.push(source);
  }
  return groups.flatMap(({ sources: [first, ...others] }, index): readonly Template[] =>
    first === undefined
      ? []
      : [{ ...first, id: `F${index + 1}`, users: [first, ...others].map(({ fit }) => fit) }],
  );
}

const same = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((value, index) => sameLength(value, b[index] ?? Infinity, SAME_OVERHANG));

/** Every number that a template shows, in a fixed order. */
function shownNumbers({ fit, fastening }: TemplateSource): readonly number[] {
  const { face, back, box, strip } = templateGeometry(fit);
  const { front } = fit.drawer;
  const screws = fastening?.places.map((place) => screwPoints(place, fit.boxFront)) ?? [];
  const pulls = fastening?.pullHoles ?? { diameter: 0, centers: [] };
  return [
    ...[face, back, box].flatMap(({ x, y, w, h }) => [x, y, w, h]),
    strip,
    fit.boxSide,
    ...(front.kind === 'slab' ? [0, 0] : [front.memberWidth, front.railWidth ?? front.memberWidth]),
    fastening?.holes?.pilotDiameter ?? 0,
    screws.length,
    ...screws.flatMap(({ head, crossing }) => [head.x, head.y, crossing.x, crossing.y]),
    pulls.diameter,
    ...pulls.centers.flatMap(({ x, y }) => [x, y]),
  ];
}
