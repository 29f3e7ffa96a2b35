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
  'warnings',
] as const;

/** `fit.csv`: what each drawer's fit comes to, with the warnings that name it. */
export function fitTable(fits: readonly DrawerFit[], findings: readonly Finding[]): string {
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
      warnings(fit),
    ]),
  );
}
