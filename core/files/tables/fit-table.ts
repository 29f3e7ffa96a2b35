import type { Fastening } from '../../fastening/types.ts';
import type { Finding } from '../../findings/finding.ts';
import { groupBy } from '../../collections/group-by.ts';
import { startMove } from '../../fit/budget/start-move.ts';
import { drawerName } from '../../fit/drawer-name.ts';
import type { DrawerFit } from '../../fit/types.ts';
import type { JigUse } from '../../jigs/plan-types.ts';
import { hangingOf, hungFit } from '../../jigs/sharing/hung-by.ts';
import { roundTo } from '../../units/tolerances.ts';
import { writeCsv } from '../csv.ts';

const COLUMNS = [
  'room',
  'cabinet',
  'drawer',
  'qty',
  'style',
  'overhang_left_mm',
  'overhang_right_mm',
  'overhang_top_mm',
  'overhang_bottom_mm',
  'front_w_mm',
  'front_h_mm',
  'box_w_mm',
  'box_h_mm',
  'screw',
  'screws',
  'steepest_deg',
  'pilot_bit_mm',
  'tightest_limit',
  'tightest_spare_mm',
  'start_height_mm',
  'start_side_mm',
  'warnings',
] as const;

/**
 * `fit.csv`: what each drawer's fit comes to, how its front is screwed on, where to set the slide's adjusters to
 * start (up, and to the cabinet's right) as its jigs hang it, and the warnings that name it.
 */
export function fitTable(
  fits: readonly DrawerFit[],
  fastenings: readonly Fastening[],
  findings: readonly Finding[],
  uses: readonly JigUse[],
): string {
  const usesOf = groupBy(uses, ({ fit }) => fit);
  const screwed = new Map(fastenings.map((fastening) => [fastening.fit, fastening]));
  // A row names its drawer without the room; a drawer of no row is known by its name alone.
  const isOf = ({ at }: Finding, { drawer }: DrawerFit): boolean =>
    drawer.row > 0 ? at.row === drawer.row : at.row === undefined && at.drawer === drawerName(drawer);
  const warnings = (fit: DrawerFit): string =>
    findings
      .filter((finding) => isOf(finding, fit))
      .map(({ message }) => message)
      .join('; ');
  return writeCsv(
    COLUMNS,
    fits.map((fit) => [
      fit.drawer.room ?? '',
      fit.drawer.cabinet,
      fit.drawer.drawer,
      fit.drawer.qty,
      fit.drawer.style,
      fit.overhang.left,
      fit.overhang.right,
      fit.overhang.top,
      fit.overhang.bottom,
      fit.frontW,
      fit.frontH,
      fit.boxW,
      fit.boxH,
      ...screwCells(screwed.get(fit)),
      ...startCells(fit, usesOf.get(fit) ?? []),
      warnings(fit),
    ]),
  );
}

function startCells(fit: DrawerFit, uses: readonly JigUse[]): readonly number[] {
  const hanging = hangingOf(uses.map(({ edge, jig, adjustment }) => ({ edge, jigId: jig.id, adjustment })));
  // Nothing is off: both heights are alike.
  const { heightLeft, side } = startMove(hungFit(fit, hanging), hanging.registered);
  return [roundTo(heightLeft, DECIMALS), roundTo(side, DECIMALS)];
}

/** Of mm: finer than any adjuster. */
const DECIMALS = 4;

function screwCells(fastening: Fastening | undefined): readonly (string | number)[] {
  if (fastening === undefined || fastening.screw === null) return ['', '', '', '', '', ''];
  const { screw, places, holes, tightest } = fastening;
  return [
    screw.name,
    places.length,
    Math.max(0, ...places.map(({ angle }) => angle)),
    holes?.pilotDiameter ?? '',
    tightest?.limit ?? '',
    tightest?.over ?? '',
  ];
}
