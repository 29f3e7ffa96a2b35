import { frameWidths } from '../../../order/frame-widths.ts';
import { alike, type Likeness } from '../alike.ts';
import { screwPoints } from './screw-points.ts';
import { templateGeometry } from './template-geometry.ts';
import type { Template, TemplateSource } from './types.ts';

/** The templates of an order: drawers whose templates would be the same to 0.001 mm share one. */
export function groupTemplates(sources: readonly TemplateSource[]): readonly Template[] {
  const groups: { readonly shown: Likeness; readonly sources: TemplateSource[] }[] = [];
  for (const source of sources) {
    const shown = whatIsShown(source);
    const group = groups.find((known) => alike(known.shown, shown));
    if (group === undefined) groups.push({ shown, sources: [source] });
    else group.sources.push(source);
  }
  return groups.flatMap(({ sources: [first, ...others] }, index): readonly Template[] =>
    first === undefined
      ? []
      : [{ ...first, id: `F${index + 1}`, users: [first, ...others].map(({ fit }) => fit) }],
  );
}

/** Everything that a template shows, in a fixed order: a screw that is too long for another front comes out of its face. */
function whatIsShown({ fit, fastening }: TemplateSource): Likeness {
  const { face, back, box, strip } = templateGeometry(fit);
  const { front } = fit.drawer;
  const { stile, rail } = front.kind === 'slab' ? { stile: 0, rail: 0 } : frameWidths(front);
  const places = fastening?.places ?? [];
  const pulls = fastening?.pullHoles ?? { diameter: 0, centers: [] };
  return {
    words: [fastening?.screw?.name ?? ''],
    numbers: [
      ...[face, back, box].flatMap(({ x, y, w, h }) => [x, y, w, h]),
      strip,
      fit.boxSide,
      fit.rules.backBevel.value,
      stile,
      rail,
      fastening?.holes?.pilotDiameter ?? 0,
      fastening?.holes?.clearanceDiameter ?? 0,
      places.length,
      ...places.flatMap((place) => {
        const { head, crossing } = screwPoints(place, fit.boxFront);
        return [head.x, head.y, crossing.x, crossing.y, place.lean.side, place.lean.rail];
      }),
      pulls.diameter,
      ...pulls.centers.flatMap(({ x, y }) => [x, y]),
    ],
  };
}
