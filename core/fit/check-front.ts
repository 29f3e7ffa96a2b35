import type { Finding } from '../findings/finding.ts';
import { frameWidths } from '../order/frame-widths.ts';
import { EDGES, type Edge } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { formatLength } from '../units/format-length.ts';
import { SAME_LENGTH } from '../units/tolerances.ts';
import { memberAt } from './member-at.ts';
import { fitError, fitWarning } from './fit-finding.ts';
import type { DrawerFit } from './types.ts';

interface DerivedFront {
  readonly frontW: number;
  readonly frontH: number;
}

/** Whether the front covers its box, fits its place and leaves gaps that a shop can live with. */
export function checkFront(
  fit: DrawerFit,
  derived: DerivedFront,
  standard: ShopStandard,
): readonly Finding[] {
  return [
    ...checkSize(fit, derived, standard),
    ...checkCover(fit),
    ...checkConstruction(fit),
    ...EDGES.flatMap((edge) => [
      ...checkGap(fit, edge, standard.limits.smallestGap.value),
      ...checkOverlay(fit, edge),
    ]),
  ];
}

function checkSize(fit: DrawerFit, derived: DerivedFront, standard: ShopStandard): Finding[] {
  const mm = (value: number) => formatLength(value, fit.unit);
  const findings: Finding[] = [];
  for (const [field, column, word] of [
    ['frontW', 'front_w', 'wide'],
    ['frontH', 'front_h', 'high'],
  ] as const) {
    const difference = fit[field] - derived[field];
    if (derived[field] <= 0) {
      findings.push(
        fitError(
          'no-front',
          `no front is left: the opening and its overlays make it ${mm(derived[field])} ${word}`,
          { drawer: fit.drawer, column: column, values: { [field]: derived[field] } },
        ),
      );
    } else if (Math.abs(difference) > standard.limits.sizeDifference.value + SAME_LENGTH) {
      findings.push(
        fitWarning(
          'front-size',
          `the front is ${mm(fit[field])} ${word}; opening and overlays make it ${mm(derived[field])}, ${mm(Math.abs(difference))} ${difference > 0 ? 'less' : 'more'}`,
          { drawer: fit.drawer, column: column, values: { given: fit[field], derived: derived[field] } },
        ),
      );
    }
  }
  return findings;
}

function checkCover(fit: DrawerFit): Finding[] {
  const mm = (value: number) => formatLength(value, fit.unit);
  const findings: Finding[] = [];
  if (fit.frontW < fit.boxW - SAME_LENGTH || fit.frontH < fit.boxH - SAME_LENGTH) {
    findings.push(
      fitError(
        'front-smaller',
        `the front, ${mm(fit.frontW)} x ${mm(fit.frontH)}, is smaller than its box, ${mm(fit.boxW)} x ${mm(fit.boxH)}`,
        {
          drawer: fit.drawer,
          values: { frontW: fit.frontW, frontH: fit.frontH, boxW: fit.boxW, boxH: fit.boxH },
        },
      ),
    );
    return findings;
  }
  for (const edge of EDGES) {
    const overhang = fit.overhang[edge];
    if (overhang < -SAME_LENGTH) {
      findings.push(
        fitWarning('box-proud', `the box stands ${mm(-overhang)} proud of the front's ${edge} edge`, {
          drawer: fit.drawer,
          values: { edge, overhang },
        }),
      );
    }
  }
  return findings;
}

function checkConstruction(fit: DrawerFit): Finding[] {
  const { front } = fit.drawer;
  if (front.kind === 'slab') return [];
  const { stile, rail } = frameWidths(front);
  if (2 * stile < fit.frontW - SAME_LENGTH && 2 * rail < fit.frontH - SAME_LENGTH) return [];
  const mm = (value: number) => formatLength(value, fit.unit);
  return [
    fitError(
      'no-panel',
      `a five-piece front of ${mm(fit.frontW)} x ${mm(fit.frontH)} has no room for a panel between ${stile === rail ? `stiles and rails of ${mm(stile)}` : `stiles of ${mm(stile)} and rails of ${mm(rail)}`}`,
      {
        drawer: fit.drawer,
        column: 'front',
        values: { memberWidth: stile, railWidth: rail, frontW: fit.frontW, frontH: fit.frontH },
      },
    ),
  ];
}

function checkGap(fit: DrawerFit, edge: Edge, smallest: number): Finding[] {
  const gap = fit.gaps[edge];
  if (gap === null || gap >= smallest - SAME_LENGTH) return [];
  const mm = (value: number) => formatLength(value, fit.unit);
  const about = { drawer: fit.drawer, column: edge };
  return gap < -SAME_LENGTH
    ? [
        fitError(
          'gap-negative',
          `the gap at the front's ${edge} edge would be ${mm(gap)}: the front is too large for its place`,
          { ...about, values: { edge, gap } },
        ),
      ]
    : [
        fitWarning(
          'gap-small',
          `the gap at the front's ${edge} edge is ${mm(gap)}; the shop standard's smallest is ${mm(smallest)}`,
          { ...about, values: { edge, gap, smallest } },
        ),
      ];
}

/** A front that reaches past the member that it laps stands out of the cabinet, or over a door. */
function checkOverlay(fit: DrawerFit, edge: Edge): Finding[] {
  const { overlay, condition } = fit.rules.edges[edge];
  const memberWidth = memberAt(edge, fit.rules);
  if (condition.kind === 'inset' || overlay <= memberWidth + SAME_LENGTH) return [];
  const mm = (value: number) => formatLength(value, fit.unit);
  return [
    fitWarning(
      'overlay-past-member',
      `the front laps ${mm(overlay)} at its ${edge} edge, past the ${mm(memberWidth)} member there`,
      { drawer: fit.drawer, column: edge, values: { edge, overlay, memberWidth } },
    ),
  ];
}
