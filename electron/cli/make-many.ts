import { availableParallelism } from 'node:os';
import { checkChoice } from '../../core/files/output-choice.ts';
import { hasErrors } from '../../core/findings/make.ts';
import { earlierFolder } from '../files/earlier-output.ts';
import type { Call } from './arguments.ts';
import { cautionText } from './help.ts';
import { inLanes, type Lane } from './lanes.ts';
import { loadMachine, loadStandard } from './load.ts';
import type { OrderReport, OrderResult } from './order-result.ts';
import { callsOf } from './order-places.ts';
import { BadCall, type Output } from './output.ts';
import { findingLines } from './print-findings.ts';
import { failedReport, reportOrder } from './report-order.ts';
import { resultLine, summaryText } from './summary.ts';
import { threadFile, workerLane } from './worker-lane.ts';

/** In this thread, where one is enough. */
const here: Lane<Call, OrderReport> = { do: reportOrder, close: async () => undefined };

/**
 * Makes several orders, each in a place of its own in `--out`, on as many threads as the call says. Of an order
 * that is done only its result is kept; what there is to say of it is said at once.
 */
export async function makeMany(call: Call, output: Output): Promise<readonly OrderResult[]> {
  const begun = performance.now();
  await checkCommon(call);
  const total = call.orders.length;
  const jobs = Math.min(call.jobs ?? availableParallelism(), total);
  const file = jobs === 1 ? null : threadFile('worker');
  const results: OrderResult[] = [];
  let ended = 0;
  await inLanes({
    tasks: callsOf(call),
    count: file === null ? 1 : jobs,
    open: () => (file === null ? here : workerLane(file)),
    broken: failedReport,
    done({ result, findings }, index) {
      ended += 1;
      results[index] = result;
      for (const line of findings) output.err(`${line}\n`);
      output.out(`${ended}/${total} ${resultLine(result)}\n`);
    },
  });
  output.out(`\n${summaryText(results, (performance.now() - begun) / 1000)}\n${cautionText()}`);
  return results;
}

/** What is wrong for every order is a bad call, not the fault of each. */
async function checkCommon(call: Call): Promise<void> {
  const [wrong] = checkChoice({ ...call.choice, jigs: 'all' }, []);
  if (wrong !== undefined) throw new BadCall(wrong.message);
  const { findings: ofMachine } = await loadMachine(call.machine);
  const { findings: ofStandard } = await loadStandard(call.standard);
  const findings = [...ofMachine, ...ofStandard];
  if (hasErrors(findings)) throw new BadCall(findingLines(findings, call.out).join('\n'));
  if ((await earlierFolder(call.out)) !== null) {
    throw new BadCall(`--out ${call.out} is the folder of one order; name another for several`);
  }
}
