import { bundleOrder, type PartExporter } from '../../core/bundle.ts';
import { manifest } from '../../core/files/manifest.ts';
import { checkChoice, includesJig } from '../../core/files/output-choice.ts';
import { partPaths } from '../../core/files/part-paths.ts';
import type { Finding } from '../../core/findings/finding.ts';
import { hasErrors } from '../../core/findings/make.ts';
import { designOrder, type Workshop } from '../../core/pipeline.ts';
import { loadPaperFonts, STROKE_FONT } from '../../shared/library.ts';
import { bringBack } from '../files/bring-back.ts';
import { earlierFolder, earlierZip } from '../files/earlier-output.ts';
import { freshFolder } from '../files/fresh-folder.ts';
import { freshZip } from '../files/fresh-zip.ts';
import { codeOf, reasonOf, Refusal } from '../files/refusal.ts';
import { writeAhead } from '../files/write-ahead.ts';
import type { Call } from './arguments.ts';
import { loadMachine, loadOrder } from './load.ts';
import { loadManifold } from './load-manifold.ts';
import { madeFrom } from './made-from.ts';
import { madeText } from './made-text.ts';
import { NOTHING, type OrderReport, type OrderResult } from './order-result.ts';
import { BadCall } from './output.ts';
import { isWorthAThread } from './part-thread.ts';
import { findingLines } from './print-findings.ts';
import { share } from './share.ts';

/**
 * Makes one order, from reading it to its folder or zip at `call.out`, unless that is there already. Throws
 * `BadCall` where the order cannot be read or its place cannot be written; then nothing is changed.
 */
export async function makeOrder(
  call: Call,
  show: (done: number, of: number) => void = () => undefined,
  exporter?: PartExporter,
): Promise<OrderReport> {
  const begun = performance.now();
  const findings: Finding[] = [];
  const report = (
    state: OrderResult['state'],
    counts: Partial<OrderResult> = {},
    text = '',
  ): OrderReport => ({
    result: {
      ...NOTHING,
      ...counts,
      order: call.order,
      place: call.out,
      state,
      errors: findings.filter(({ severity }) => severity === 'error').length,
      warnings: findings.filter(({ severity }) => severity === 'warning').length,
      seconds: (performance.now() - begun) / 1000,
    },
    findings: findingLines(findings, call.order),
    text,
  });

  await bringBack(call.out);
  const loaded = await loadOrder(call);
  const own = call.machine === undefined ? loaded.value?.machine : undefined;
  const machine = own === undefined ? await loadMachine(call.machine) : { value: own, findings: [] };
  findings.push(...machine.findings, ...loaded.findings);
  if (machine.value === null || loaded.value === null || hasErrors(findings)) return report('failed');
  const unshared: Workshop = {
    standard: loaded.value.standard,
    machine: machine.value,
    registration: call.registration ?? loaded.value.registration ?? 'edge',
    font: STROKE_FONT,
  };
  const sharing = call.sharing ?? loaded.value.sharing ?? 'each';
  const { text, order } = loaded.value;
  const key = madeFrom({ text, order, workshop: unshared, sharing, choice: call.choice });
  if (!call.again) {
    const earlier = await (call.zip ? earlierZip : earlierFolder)(call.out);
    if (earlier?.whole === true && earlier.madeFrom === key) {
      return report('unchanged', { drawers: drawersOf(order.drawers), files: earlier.files });
    }
  }

  const shared = await share(order, unshared, sharing);
  findings.push(...shared.findings);
  const workshop = shared.value === null ? unshared : { ...unshared, sharing: shared.value };
  const design = designOrder(order, workshop);
  findings.push(...design.findings);
  if (hasErrors(findings)) return report('failed');
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
      ...(exporter !== undefined && isWorthAThread(parts) ? { exportParts: exporter } : {}),
    })) {
      findings.push(...step.findings);
      for (const file of step.files) await writes.put(file);
      show(step.done, step.of);
    }
    if (hasErrors(findings)) {
      await writes.ended();
      await output.discard();
      return report('failed');
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
        madeFrom: key,
      }),
    });
    await output.finish();
    const made = {
      drawers: drawersOf(order.drawers),
      jigs: plan.jigs.filter(({ id }) => includesJig(call.choice, id)).length,
      parts: parts.filter(({ jig }) => includesJig(call.choice, jig)).length,
      files: listed.length + 1,
    };
    return report('made', made, madeText(call, design.value, workshop, made.files, findings));
  } catch (problem) {
    await writes.ended();
    await output.discard();
    return badOut(problem);
  }
}

const drawersOf = (drawers: readonly { readonly qty: number }[]): number =>
  drawers.reduce((sum, { qty }) => sum + qty, 0);

/** A folder that may not or cannot be written is a bad `--out`. */
function badOut(problem: unknown): never {
  if (problem instanceof Refusal) throw new BadCall(`--out ${problem.message}`);
  if (codeOf(problem) === '') throw problem;
  throw new BadCall(`--out cannot be written: ${reasonOf(problem)}; name another folder`);
}
