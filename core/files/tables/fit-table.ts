import type { Fastening } from '../../fastening/types.ts';
import type { Finding } from '../../findings/finding.ts';
import { drawerName } from '../../fit/name.ts';
import type { DrawerFit } from '../../fit/types.ts';
import { writeCsv } from '../csv.ts';

const COLUMNS = [
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
  'warnings',
] as const;

/** `fit.csv`: what each drawer's fit comes to, how its front is screwed on, and the warnings that name it. */
export function fitTable(
  fits: readonly DrawerFit[],
  fastenings: readonly Fastening[],
  findings: readonly Finding[],
): string {
  const screwed = new Map(fastenings.map((fastening) => [fastening.fit, fastening]));
  const warnings = (fit: DrawerFit): string =>
    findings
      .filter(({ at }) => at.drawer === drawerName(fit.drawer) && (at.row ?? 0) === fit.drawer.row)
      .map(({ message }) => message)
      .join('; ');
  return writeCsv(
    COLUMNS,
    fits.map((fit) => [
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
      warnings(fit),
    ]),
  );
}

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
