import { groupBy } from '../../collections/group-by.ts';
import type { Fastening } from '../../fastening/types.ts';
import type { GuideNeeds } from './guide-needs.ts';
import type { GuideSetup } from './types.ts';

/** Drawers that are fastened alike, and what each of them asks of guides. */
export interface AlikeDrawers {
  readonly fastenings: readonly Fastening[];
  readonly needs: GuideNeeds;
}

/** The same corner of all drawers that ask for the very same bores. */
export interface GuideCorner {
  /** In the smallest of their boxes. */
  readonly setup: GuideSetup;
  readonly refusal: string | null;
  readonly drawers: number;
  /** The text of their needs, and the place of the corner among them. */
  readonly text: string;
  readonly index: number;
}

/** The corners of an order; few, however many drawers it has. */
export const guideCorners = (order: readonly AlikeDrawers[]): readonly GuideCorner[] =>
  [...groupBy(order, ({ needs }) => needs.text)].flatMap(([text, group]) => {
    const drawers = group
      .flatMap(({ fastenings }) => fastenings)
      .reduce((sum, { fit }) => sum + fit.drawer.qty, 0);
    // All corners of a box have the same room.
    const boxes = group.flatMap(({ needs }) => needs.corners[0]?.setup ?? []);
    const corners = group[0]?.needs.corners ?? [];
    return corners.map(({ setup, refusal }, index): GuideCorner => ({
      setup: strictest(setup, boxes),
      refusal,
      drawers,
      text,
      index,
    }));
  });

/** A set-up that serves the boxes of others too: the smallest room, the thinnest box front. */
export function strictest(
  setup: GuideSetup,
  boxes: readonly Pick<GuideSetup, 'boxFront' | 'room'>[],
): GuideSetup {
  let {
    boxFront,
    room: { x, y },
  } = setup;
  for (const { boxFront: front, room } of boxes) {
    boxFront = Math.min(boxFront, front);
    x = Math.min(x, room.x);
    y = Math.min(y, room.y);
  }
  return { ...setup, boxFront, room: { x, y } };
}
