import type { Finding } from '../../core/findings/finding.ts';
import { hasErrors } from '../../core/findings/make.ts';
import { fitOrder } from '../../core/fit/fit-order.ts';
import type { Call } from './arguments.ts';
import { loadOrder } from './load.ts';
import { EXIT, type ExitCode, type Output } from './output.ts';
import { counted, findingCounts, findingLines } from './print-findings.ts';

/** `overhang check`: reads and fits an order, tells all that is wrong, writes nothing. */
export async function check(call: Call, output: Output): Promise<ExitCode> {
  const loaded = await loadOrder(call);
  const findings: Finding[] = [...loaded.findings];
  if (loaded.value !== null) findings.push(...fitOrder(loaded.value.order, loaded.value.standard).findings);
  for (const line of findingLines(findings, call.order)) output.err(`${line}\n`);
  const lines = loaded.value?.order.drawers.length ?? 0;
  output.out(`${counted(lines, 'line')} fitted, ${findingCounts(findings)}\n`);
  return hasErrors(findings) ? EXIT.faults : EXIT.ok;
}
