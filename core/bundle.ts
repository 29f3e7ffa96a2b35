import type { ManifoldToplevel } from 'manifold-3d';
import type { Finding, Outcome } from './findings/finding.ts';
import type { BundleFile, BundleStep } from './bundle-types.ts';
import type { paperMaker } from './bundle-paper.ts';
import { bundleCoupon } from './bundle-coupon.ts';
import { bundleSheets } from './bundle-sheets.ts';
import { bundleSolids } from './bundle-solids.ts';
import { USUAL, includesJig, includesKind, includesParts, type OutputChoice } from './files/output-choice.ts';
import { PAPER_KINDS, type OutputKindId } from './files/output-kinds.ts';
import type { ExportedPart } from './files/export-part.ts';
import type { PaperFonts } from './files/paper/pdf/fonts.ts';
import { partPaths } from './files/part-paths.ts';
import { readFirst } from './files/read-first.ts';
import { fitTable } from './files/tables/fit-table.ts';
import { partsTable } from './files/tables/parts-table.ts';
import { scheduleTable } from './files/tables/schedule-table.ts';
import type { OrderPlan } from './jigs/plan-order.ts';
import type { Part } from './parts/types.ts';
import { exportParts, type Design, type Workshop } from './pipeline.ts';

export type { BundleFile, BundleStep } from './bundle-types.ts';

/** Exports the parts of these jigs, one result for each, in their order. */
export type PartExporter = (
  of: Pick<Design, 'parts'> & Pick<OrderPlan, 'jigs'>,
  workshop: Workshop,
) => AsyncIterable<Outcome<ExportedPart | null>>;

/** How a caller has a say in the long steps. */
export interface BundleWatch {
  /** Exports parts elsewhere, beginning when it is called: what is not drawn is made meanwhile. Here if left out. */
  readonly exportParts?: PartExporter;
  /** Asked all the while; what comes after it says true is not wanted. */
  readonly stop?: () => boolean;
  /** Loads the fonts of what is printed; asked for only when something is. */
  readonly paperFonts?: () => Promise<PaperFonts>;
  /** Loads and sets up the geometry library that fuses solids; asked for only when they are chosen. */
  readonly manifold?: () => Promise<ManifoldToplevel>;
}

/** The files of one kind of output, some at a time. */
type Files = Iterable<Outcome<readonly BundleFile[]>> | AsyncIterable<Outcome<readonly BundleFile[]>>;

/**
 * The chosen files of an order's folder but for the manifest, a part at a time; the lists come last, when
 * every part is known to be good. Fit and schedule are of the whole order whatever jigs are chosen.
 * `findings` are those of the design, for the warnings column of `fit.csv`. Each kind of paper, and sheets, coupon and
 * solids, count as one part. A step may have no file: it is there so that a caller can see to other things.
 */
export async function* bundleOrder(
  design: Design,
  findings: readonly Finding[],
  workshop: Workshop,
  choice: OutputChoice = USUAL,
  watch: BundleWatch = {},
): AsyncGenerator<BundleStep> {
  const { machine, font } = workshop;
  const { order, fits, fastenings, plan } = design;
  const has = (id: OutputKindId): boolean => includesKind(choice, id);
  const parts = design.parts.filter(({ jig }) => includesJig(choice, jig));
  const jigs = plan.jigs.filter(({ id }) => includesJig(choice, id));
  const pathsOf = partPaths(machine.dxf.unit);
  const drawn = includesParts(choice) ? parts : [];
  let printer: ReturnType<typeof printerOf> | undefined;
  const wholes: readonly (() => Files)[] = [
    ...PAPER_KINDS.filter(has).map(
      (kind) =>
        async function* print(): AsyncIterable<Outcome<readonly BundleFile[]>> {
          yield await (
            await (printer ??= printerOf(design, workshop, choice, watch))
          )(kind);
        },
    ),
    ...(has('sheets') ? [() => bundleSheets(parts, machine, watch.stop)] : []),
    ...(has('coupon') ? [() => [bundleCoupon(machine, font, order.date)]] : []),
    ...(has('solids') ? [() => bundleSolids(jigs, machine, manifoldOf(watch), watch.stop)] : []),
  ];
  const of = drawn.length + wholes.length;
  let done = 0;
  const elsewhere = drawn.length === 0 ? undefined : watch.exportParts?.({ parts, jigs }, workshop);
  async function* cutFiles(): AsyncGenerator<BundleStep> {
    for await (const { value, findings: problems } of elsewhere ?? exportParts(drawn, machine)) {
      done += 1;
      const files: BundleFile[] = [];
      if (value !== null) {
        const { dxf, svg } = pathsOf(value.part);
        if (has('dxf')) files.push({ path: dxf, content: value.dxf, report: value.dxfReport });
        if (has('svg')) files.push({ path: svg, content: value.svg, report: value.svgReport });
      }
      yield { done, of, files, findings: problems };
    }
  }
  if (elsewhere === undefined) yield* cutFiles();
  for (const whole of wholes) {
    if (watch.stop?.() === true) return;
    for await (const { value, findings: problems } of whole()) {
      yield { done, of, files: value, findings: problems };
    }
    done += 1;
  }
  if (elsewhere !== undefined) yield* cutFiles();
  const files: BundleFile[] = [];
  if (has('fit')) files.push({ path: 'fit.csv', content: fitTable(fits, fastenings, findings, plan.uses) });
  if (has('schedule')) files.push({ path: 'schedule.csv', content: scheduleTable(plan, order.unit) });
  if (has('parts')) {
    // A list names no file that is not there.
    const listed = (part: Part) => {
      const { dxf, svg } = pathsOf(part);
      return { dxf: has('dxf') ? dxf : '', svg: has('svg') ? svg : '' };
    };
    files.push({ path: 'parts.csv', content: partsTable(parts, listed) });
  }
  if (has('read-first')) {
    files.push({ path: 'read-first.txt', content: readFirst(order, plan, machine, choice) });
  }
  yield { done, of, files, findings: [] };
}

/** The writer of PDF is large: it is loaded with the fonts, when something is printed. */
async function printerOf(
  design: Design,
  workshop: Workshop,
  choice: OutputChoice,
  { paperFonts }: BundleWatch,
): Promise<ReturnType<typeof paperMaker>> {
  if (paperFonts === undefined) throw new RangeError('bundleOrder: paper is chosen, and no fonts are given');
  const [maker, fonts] = await Promise.all([import('./bundle-paper.ts'), paperFonts()]);
  return maker.paperMaker(design, workshop, choice.paper, fonts);
}

function manifoldOf({ manifold }: BundleWatch): () => Promise<ManifoldToplevel> {
  if (manifold === undefined) {
    throw new RangeError('bundleOrder: solids are chosen, and no geometry library is given');
  }
  return manifold;
}
