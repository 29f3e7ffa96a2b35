import { FRONT_CORNERS, gapPlaces, type FrontCorner } from '../fit/budget/places.ts';
import type { DrawerFit, Placed } from '../fit/types.ts';
import type { Point } from '../geometry/types.ts';
import { EDGES, type Edge } from '../order/types.ts';

/** A gap at a corner, between the front's edge and the opening's. */
export interface PictureGap {
  readonly edge: Edge;
  readonly corner: FrontCorner;
  readonly from: Point;
  readonly to: Point;
}

/** The edge of a member beside the front; hidden behind it where the front laps. */
export interface PictureMember {
  readonly edge: Edge;
  readonly laps: boolean;
  readonly from: Point;
  readonly to: Point;
}

/** A front as someone facing the closed cabinet sees it, mm, y down; its gaps are drawn much too wide. */
export interface FrontPicture {
  readonly view: Placed;
  readonly front: Placed;
  readonly members: readonly PictureMember[];
  readonly gaps: readonly PictureGap[];
}

/** A gap is drawn this share of the front's longer side wide. */
const DRAWN_GAP = 0.035;

/** How far from the corner a gap is read, as a share of its edge. */
const FROM_CORNER = 0.06;

export function frontPicture(fit: DrawerFit): FrontPicture {
  const { frontW: w, frontH: h, gaps } = fit;
  const wide = DRAWN_GAP * Math.max(w, h);
  const out = (edge: Edge): number => (gaps[edge] === null ? -wide : wide);
  const opening = {
    left: -out('left'),
    right: w + out('right'),
    top: -out('top'),
    bottom: h + out('bottom'),
  };
  const reach = 2 * wide;
  return {
    view: { x: -reach, y: -reach, w: w + 2 * reach, h: h + 2 * reach },
    front: { x: 0, y: 0, w, h },
    members: EDGES.map((edge): PictureMember => {
      const laps = gaps[edge] === null;
      const at = opening[edge];
      return edge === 'left' || edge === 'right'
        ? { edge, laps, from: { x: at, y: opening.top }, to: { x: at, y: opening.bottom } }
        : { edge, laps, from: { x: opening.left, y: at }, to: { x: opening.right, y: at } };
    }),
    gaps: gapPlaces(fit).flatMap(({ edge, corner }): readonly PictureGap[] => {
      if (gaps[edge] === null) return [];
      const x = corner.endsWith('Left') ? FROM_CORNER * w : (1 - FROM_CORNER) * w;
      const y = corner.startsWith('top') ? FROM_CORNER * h : (1 - FROM_CORNER) * h;
      const at = opening[edge];
      return edge === 'left' || edge === 'right'
        ? [{ edge, corner, from: { x: edge === 'left' ? 0 : w, y }, to: { x: at, y } }]
        : [{ edge, corner, from: { x, y: edge === 'top' ? 0 : h }, to: { x, y: at } }];
    }),
  };
}

/** The gaps that can be read at each corner, the side's first. */
export const cornerGaps = ({ gaps }: FrontPicture): Readonly<Record<FrontCorner, readonly Edge[]>> => {
  const at = (corner: FrontCorner): readonly Edge[] =>
    gaps.filter((gap) => gap.corner === corner).map(({ edge }) => edge);
  const [topLeft, topRight, bottomLeft, bottomRight] = FRONT_CORNERS.map(at);
  return {
    topLeft: topLeft ?? [],
    topRight: topRight ?? [],
    bottomLeft: bottomLeft ?? [],
    bottomRight: bottomRight ?? [],
  };
};
