import type { Fastening, ScrewPlace } from '../../../core/fastening/types.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';

/** mm. Where the screws of a made-up fastening are, from the inside faces of the box. */
export const FROM = { side: 16, end: 20 } as const;

/** Screws that lean towards the sides by some degrees, and two holes for a pull. */
export function leaning(fit: DrawerFit, degrees: number): Fastening {
  const { overhang, boxW, boxH } = fit;
  const box = { x: overhang.right, y: overhang.bottom, w: boxW, h: boxH };
  const turn = (degrees * Math.PI) / 180;
  const places = (['left', 'right'] as const).flatMap((hand) =>
    (['bottom', 'top'] as const).map((end): ScrewPlace => {
      const inside = fit.boxSide + FROM.side;
      const way = hand === 'left' ? 1 : -1;
      return {
        corner: { hand, end },
        index: 0,
        along: 'end',
        pilotDepth: 14,
        // The cabinet's left is at the right of the back view.
        entry: {
          x: hand === 'left' ? box.x + box.w - inside : box.x + inside,
          y: end === 'bottom' ? box.y + FROM.end : box.y + box.h - FROM.end,
        },
        fromSide: FROM.side,
        fromEnd: FROM.end,
        lean: { side: degrees, rail: 0 },
        angle: degrees,
        smallestAngle: degrees,
        direction: { x: way * Math.sin(turn), y: 0, z: -Math.cos(turn) },
        wood: fit.drawer.front.kind === 'slab' ? 'slab' : `${hand} stile`,
        margins: [],
        active: [],
      };
    }),
  );
  const source = 'made up';
  const mm = (value: number) => ({ value, source });
  return {
    fit,
    screw: {
      name: '#8 x 1-1/4 in pan',
      gauge: 8,
      head: 'pan',
      diameter: mm(4.2),
      root: mm(3),
      headDiameter: mm(8.2),
      length: mm(31.75),
      thread: mm(31.75),
    },
    places,
    impossible: [],
    holes: {
      plan: 'pilot through both',
      why: 'made up',
      pilotDiameter: 2.778125,
      pilotTarget: 2.7,
      pilotDepth: 14,
      clearanceDiameter: 0,
    },
    withdrawal: { capacity: 1000, pull: 300 },
    pullHoles: {
      diameter: 4.8,
      centers: [-48, 48].map((x) => ({ x: fit.frontW / 2 + x, y: fit.frontH / 2 })),
    },
    tightest: null,
  };
}
