import { bundleOrder, type PartExporter } from '../../core/bundle.ts';
import { manifest } from '../../core/files/manifest.ts';
import { checkChoice, includesJig } from '../../core/files/output-choice.ts';
import { partPaths } from '../../core/files/part-paths.ts';
import type { Finding } from '../../core/findings/finding.ts';
import { hasErrors } from '../../core/findings/make.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import type { Order } from '../../core/order/types.ts';
import { designOrder, type Workshop } from '../../core/pipeline.ts';
import { loadPaperFonts } from '../../shared/load-paper-fonts.ts';
import { freshFolder } from '../files/fresh-folder.ts';
import { freshZip } from '../files/fresh-zip.ts';
import { codeOf, reasonOf, Refusal } from '../files/refusal.ts';
import { writeAhead } from '../files/write-ahead.ts';
import type { Call } from './arguments.ts';
import { countDrawers } from './count-drawers.ts';
import { loadManifold } from './load-manifold.ts';
import { madeText } from './made-text.ts';
import type { OrderResult } from './order-result.ts';
import { BadCall } from './output.ts';
import { share } from './share.ts';

/** An order as it was read, with what it is made with. */
export interface LoadedOrder {
  readonly order: Order;
  /** Without its sharing, which is worked out from the wish. */
  readonly workshop: Workshop;
  readonly sharing: JigSharing;
  /** The hash of all that its files depend on. */
  readonly madeFrom: string;
}

/** How a caller has a say in the long steps. */
export interface WriteWatch {
  readonly show: (done: number, of: number) => void;
  /** Exports parts elsewhere; here if undefined. */
  readonly exportParts: PartExporter | undefined;
}

/** What was written, counted and in words. */
export interface WrittenOrder {
  readonly counts: Pick<OrderResult, 'drawers' | 'jigs' | 'parts' | 'files'>;
  readonly text: string;
}

/**
 * Designs an order and writes its folder or zip at `call.out`, whole or not at all; null where there is an error
 * among the findings, which are added to `findings`. Throws `BadCall` where the place cannot be written.
 */
export async function writeOrder(
  call: Call,
  loaded: LoadedOrder,
  findings: Finding[],
  { show, exportParts }: WriteWatch,
): Promise<WrittenOrder | null> {
  const { order } = loaded;
  const shared = await share(order, loaded.workshop, loaded.sharing);
  findings.push(...shared.findings);
  const workshop = shared.value === null ? loaded.workshop : { ...loaded.workshop, sharing: shared.value };
  const design = designOrder(order, workshop);
  findings.push(...design.findings);
  if (hasErrors(findings)) return null;
  const { plan, parts } = design.value;
  const [wrong] = checkChoice(
    call.choice,
    plan.jigs.map(({ id }) => id),
  );
  if (wrong !== undefined) throw new BadCall(wrong.message);

  const output = await (call.zip ? freshZip : freshFolder)(call.out).catch(badOut);
  const writes = writeAhead(output);
  try {
    for await (const step of bundleOrder(design.value, findings, workshop, call.choice, {
      paperFonts: loadPaperFonts,
      manifold: loadManifold,
      ...(exportParts === undefined ? {} : { exportParts }),
    })) {
      findings.push(...step.findings);
      for (const file of step.files) await writes.put(file);
      show(step.done, step.of);
    }
    if (hasErrors(findings)) {
      await writes.ended();
      await output.discard();
      return null;
    }
    const listed = (await writes.all()).toSorted((a, b) => (a.path < b.path ? -1 : 1));
    await output.write({
      path: 'manifest.json',
      content: manifest({
        order,
        standard: workshop.standard,
        machine: workshop.machine,
        plan,
        parts,
        files: listed,
        pathsOf: partPaths(workshop.machine.dxf.unit),
        choice: call.choice,
        madeFrom: loaded.madeFrom,
      }),
    });
    await output.finish();
    const files = listed.length + 1;
    return {
      counts: {
        drawers: countDrawers(order),
        jigs: plan.jigs.filter(({ id }) => includesJig(call.choice, id)).length,
        parts: parts.filter(({ jig }) => includesJig(call.choice, jig)).length,
        files,
      },
      text: madeText(call, design.value, workshop, files, findings),
    };
  } catch (problem) {
    await writes.ended();
    await output.discard();
    return badOut(problem);
  }
}

/** A folder that may not or cannot be written is a bad `--out`. */
function badOut(problem: unknown): never {
  if (problem instanceof Refusal) throw new BadCall(`--out ${problem.message}`);
  if (codeOf(problem) === '') throw problem;
  throw new BadCall(`--out cannot be written: ${reasonOf(problem)}; name another folder`);
}
