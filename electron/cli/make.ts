import { stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { saveFile } from '../files/save-file.ts';
import { reasonOf } from '../files/refusal.ts';
import type { Call } from './arguments.ts';
import { cautionText } from './help.ts';
import { makeMany } from './make-many.ts';
import { makeOrder } from './make-order.ts';
import type { OrderResult } from './order-result.ts';
import { partThread } from './part-thread.ts';
import { placeOf } from './order-places.ts';
import { BadCall, EXIT, type ExitCode, type Output } from './output.ts';
import { counted } from './print-findings.ts';
import { progress } from './progress.ts';
import { summaryJson } from './summary.ts';

/** `overhang make`: orders in, a folder or zip of cut files and tables for each. */
export async function make(call: Call, output: Output): Promise<ExitCode> {
  const begun = performance.now();
  if (call.summary !== undefined) await checkSummaryPlace(call.summary);
  const results = call.orders.length === 1 ? [await makeOne(call, output)] : await makeMany(call, output);
  if (call.summary !== undefined) {
    const text = summaryJson(results, (performance.now() - begun) / 1000);
    await saveFile(call.summary, Buffer.from(text)).catch((problem: unknown) => {
      throw new BadCall(`--summary cannot be written: ${reasonOf(problem)}; the orders are done`);
    });
  }
  return results.some(({ state }) => state === 'failed') ? EXIT.faults : EXIT.ok;
}

async function makeOne(call: Call, output: Output): Promise<OrderResult> {
  const place = placeOf(call);
  const { result, findings, text } = await makeOrder({ ...call, out: place }, progress(output), (lines) =>
    partThread(lines, call.jobs),
  );
  for (const line of findings) output.err(`${line}\n`);
  if (result.state === 'failed') {
    output.err(
      `${counted(result.errors, 'error')}, ${counted(result.warnings, 'warning')}; nothing was written\n`,
    );
  } else if (result.state === 'unchanged') {
    output.out(
      `unchanged: ${counted(result.files, 'file')} of this very order are in ${place}; --again makes them again and tells what there is to warn of\n`,
    );
  } else output.out(`${text}\n${cautionText()}`);
  return result;
}

/** Before any work, so that nobody waits for a summary that cannot be. */
async function checkSummaryPlace(path: string): Promise<void> {
  const folder = await stat(dirname(path)).catch(() => null);
  if (folder?.isDirectory() !== true) throw new BadCall(`--summary ${path}: its folder is not there`);
  const found = await stat(path).catch(() => null);
  if (found?.isDirectory() === true) throw new BadCall(`--summary ${path} is a folder; name a file`);
}
