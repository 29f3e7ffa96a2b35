import { drawerName } from '../fit/drawer-name.ts';
import type { OrderPlan } from '../jigs/plan-order.ts';
import type { Jig } from '../jigs/types.ts';
import type { Order } from '../order/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { Part } from '../parts/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { roundTo } from '../units/tolerances.ts';
import type { ExportReport } from './drawing.ts';
import { USUAL, includesJig, includesKind, leftOut, type OutputChoice } from './output-choice.ts';

export const MANIFEST_FORMAT = 'overhang-manifest';

/** A file of the folder as it was written. */
export interface ListedFile {
  readonly path: string;
  /** Bytes. */
  readonly size: number;
  readonly sha256: string;
  readonly report?: ExportReport;
}

interface ManifestOf {
  readonly order: Order;
  readonly standard: ShopStandard;
  readonly machine: MachineProfile;
  readonly plan: OrderPlan;
  readonly parts: readonly Part[];
  readonly files: readonly ListedFile[];
  readonly pathsOf: (part: Part) => { readonly dxf: string; readonly svg: string };
  readonly choice?: OutputChoice;
  /** SHA-256 over all that the files depend on; the same again means the same files. */
  readonly madeFrom?: string;
}

/**
 * `manifest.json`: every file with size and SHA-256, for each part what it sets and for whom, and what was
 * left out by choice.
 */
export function manifest(of: ManifestOf): string {
  const { order, standard, machine, plan, parts, files, pathsOf, choice = USUAL, madeFrom } = of;
  const cutFiles = (part: Part) => {
    const { dxf, svg } = pathsOf(part);
    return {
      ...(includesKind(choice, 'dxf') ? { dxf } : {}),
      ...(includesKind(choice, 'svg') ? { svg } : {}),
    };
  };
  const jigs = new Map(plan.jigs.map((jig) => [jig.id, jig]));
  const document = {
    format: MANIFEST_FORMAT,
    version: 2,
    ...(madeFrom === undefined ? {} : { made_from: madeFrom }),
    order: { name: order.name, date: order.date ?? null },
    standard: standard.name,
    machine: {
      name: machine.name,
      kind: machine.kind,
      kerf_mm: machine.kerf,
      compensation: machine.compensation,
      sheet_thickness_mm: machine.sheet.thickness,
      dxf: machine.dxf,
    },
    left_out: leftOut(
      choice,
      plan.jigs.map(({ id }) => id),
    ),
    files: files.map(({ path, size, sha256, report }) => ({
      path,
      size,
      sha256,
      ...(report === undefined ? {} : { report: rounded(report) }),
    })),
    parts: parts
      .filter(({ jig }) => includesJig(choice, jig))
      .map((part) => ({
        id: part.id,
        jig: part.jig,
        title: part.title,
        copies: part.copies,
        material: part.material,
        thickness_mm: part.thickness,
        hand: part.hand,
        files: cutFiles(part),
        sets: setsOf(part, jigs.get(part.jig), plan),
        sensitivity: jigs.get(part.jig)?.sensitivity ?? null,
        pins: (jigs.get(part.jig)?.pins ?? []).map(({ count, diameter, length }) => ({
          count,
          diameter_mm: roundTo(diameter, 6),
          length_mm: roundTo(length, 6),
        })),
      })),
  };
  return `${JSON.stringify(document, undefined, 2)}\n`;
}

/** What a part's jig sets: edge, overhang and the drawers that it serves. */
const setsOf = (part: Part, jig: Jig | undefined, plan: OrderPlan) =>
  part.sets.map(({ edges, overhang, backBevel }) => ({
    edges,
    overhang_mm: roundTo(overhang, 6),
    back_bevel_deg: backBevel,
    drawers: plan.uses
      .filter(
        (use) => use.jig === jig && edges.includes(use.edge) && Math.abs(use.overhang - overhang) < 0.01,
      )
      .map((use) => ({ drawer: drawerName(use.fit.drawer), edge: use.edge, qty: use.fit.drawer.qty })),
  }));

const rounded = (report: ExportReport) => ({
  unit: report.unit,
  entities: report.entities,
  cut_length_mm: roundTo(report.cutLength, 3),
  engrave_length_mm: roundTo(report.engraveLength, 3),
  open_contours_on_cut_layers: report.openContoursOnCutLayers,
  duplicates_removed: report.duplicatesRemoved,
  extents_mm: {
    min_x: roundTo(report.extents.minX, 6),
    min_y: roundTo(report.extents.minY, 6),
    max_x: roundTo(report.extents.maxX, 6),
    max_y: roundTo(report.extents.maxY, 6),
  },
});
