import type { Finding } from '../../findings/finding.ts';
import { EDGES } from '../../order/types.ts';
import { overlayOf, resolveCondition } from '../overlay.ts';
import type { ShopStandard } from '../types.ts';
import type { Fault } from './fault.ts';

/** No reveal is wider than the member that it is a part of. */
export const checkReveals = (standard: ShopStandard, fault: Fault): readonly Finding[] =>
  standard.styles.flatMap((style) =>
    EDGES.flatMap((edge) =>
      (['outer', 'shared'] as const).flatMap((situation) => {
        const condition = resolveCondition(style.edges[edge][situation].value, standard.members);
        if (condition.kind !== 'cover' || overlayOf(condition) >= 0) return [];
        const field = `styles.${style.name}.edges.${edge}.${situation}`;
        return [
          fault('reveal-over-member', field, 'the reveal is wider than the member; write a smaller one'),
        ];
      }),
    ),
  );
