import type { Edge, MemberName } from '../../core/order/types.ts';
import type { ToleranceSource } from '../../core/rules/types.ts';
import type { RowLabel } from '../document/SourcedRows.tsx';

export const MEMBER_LABELS: readonly (readonly [MemberName, string])[] = [
  ['stile', 'Stile, or side panel'],
  ['shared-stile', 'Shared stile, or middle panel'],
  ['top-rail', 'Top rail, or top panel'],
  ['mid-rail', 'Mid rail, or joint'],
  ['bottom-rail', 'Bottom rail, or bottom panel'],
];

export const EDGE_LABELS: readonly (readonly [Edge, string])[] = [
  ['left', 'Left edge'],
  ['right', 'Right edge'],
  ['top', 'Top edge'],
  ['bottom', 'Bottom edge'],
];

export const SITUATION_LABELS = [
  ['outer', 'at the outside'],
  ['shared', 'beside another front'],
] as const;

/** The room that a slide needs. */
export const SLIDE_LABELS: readonly RowLabel[] = [
  ['runningClearance', 'Running clearance', 'Box side to opening side, each side'],
  ['lift', 'Lift', 'Opening floor to box bottom, at the lowest setting'],
  ['topClearance', 'Top clearance', 'Least room between box top and opening top'],
  ['sideMember', 'Member on the box side', 'Its height, which jigs pass; 0 where the slide is under the box'],
  ['widthTolerance', 'Width tolerance', 'How far a box may be off before a warning'],
];

export const TOLERANCE_LABELS: readonly (readonly [ToleranceSource, string])[] = [
  ['opening', 'Opening'],
  ['box', 'Box'],
  ['front', 'Front'],
  ['jig', 'Jig'],
  ['seating', 'Seating of the jig'],
  ['slide', 'Slide'],
];
