import type { Fastening } from '../fastening/types.ts';
import type { Finding } from '../findings/finding.ts';
import { warning } from '../findings/make.ts';
import { drawerName } from '../fit/drawer-name.ts';
import { groupBy } from '../collections/group-by.ts';
import { formatLength } from '../units/format-length.ts';
import type { JigUse } from './plan-types.ts';
import { hangingOf } from './sharing/hung-by.ts';

/**
 * Warnings of fronts whose screws have less to spare than a shared jig shifts the front: screws are placed for the
 * overhangs wanted, and go into the front where the jig has set it.
 */
export function shiftedScrews(uses: readonly JigUse[], fastenings: readonly Fastening[]): readonly Finding[] {
  if (uses.every(({ adjustment }) => adjustment === 0)) return [];
  const usesOf = groupBy(uses, ({ fit }) => fit);
  return fastenings.flatMap(({ fit, tightest }) => {
    const own = (usesOf.get(fit) ?? []).map((use) => ({ ...use, jigId: use.jig.id }));
    const { off, jigIds } = hangingOf(own);
    const shift = Math.hypot(off.side, off.bottom);
    if (tightest === null || shift <= tightest.over) return [];
    const { drawer, unit } = fit;
    const name = drawerName(drawer);
    return [
      warning(
        'jigs/screws-shifted',
        `${jigIds.join(' and ')} ${jigIds.length === 1 ? 'sets' : 'set'} the front of ${name} ${formatLength(shift, unit)} away from where its screws were placed, and they have ${formatLength(tightest.over, unit)} to spare at ${tightest.against}; give this drawer a jig of its own, or let fewer drawers share.`,
        { ...(drawer.row > 0 ? { row: drawer.row } : {}), drawer: name },
        { shift, spare: tightest.over },
      ),
    ];
  });
}
