import { includesParts } from '../../core/files/output-choice.ts';
import type { Finding } from '../../core/findings/finding.ts';
import { hasErrors } from '../../core/findings/make.ts';
import type { Workshop } from '../../core/pipeline.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { bringBack } from '../files/bring-back.ts';
import { earlierFolder, earlierZip } from '../files/earlier-output.ts';
import type { Call } from './arguments.ts';
import { countDrawers } from './count-drawers.ts';
import { loadMachine, loadOrder } from './load.ts';
import { madeFrom } from './made-from.ts';
import { NOTHING, type OrderReport, type OrderResult } from './order-result.ts';
import type { PartThread } from './part-thread.ts';
import { findingLines } from './print-findings.ts';
import { writeOrder } from './write-order.ts';

/**
 * Makes one order, from reading it to its folder or zip at `call.out`, unless that is there already. Throws
 * `BadCall` where the order cannot be read or its place cannot be written; then nothing is changed.
 */
export async function makeOrder(
  call: Call,
  show: (done: number, of: number) => void = () => undefined,
  openThread: (lines: number) => PartThread | null = () => null,
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
  const workshop: Workshop = {
    standard: loaded.value.standard,
    machine: machine.value,
    registration: call.registration ?? loaded.value.registration ?? 'edge',
    font: STROKE_FONT,
  };
  const sharing = call.sharing ?? loaded.value.sharing ?? 'each';
  const { text, order } = loaded.value;
  const key = madeFrom({ text, order, workshop, sharing, choice: call.choice });
  if (!call.again) {
    const earlier = await (call.zip ? earlierZip : earlierFolder)(call.out);
    if (earlier?.whole === true && earlier.madeFrom === key) {
      return report('unchanged', { drawers: countDrawers(order), files: earlier.files });
    }
  }

  const thread = includesParts(call.choice) ? openThread(order.drawers.length) : null;
  try {
    const loadedOrder = { order, workshop, sharing, madeFrom: key };
    const written = await writeOrder(call, loadedOrder, findings, { show, exportParts: thread?.exportParts });
    return written === null ? report('failed') : report('made', written.counts, written.text);
  } finally {
    await thread?.close();
  }
}
