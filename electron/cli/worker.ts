import { parentPort } from 'node:worker_threads';
import type { Call } from './arguments.ts';
import { reportOrder } from './report-order.ts';

/** A thread of `overhang make`: gets a call for one order, answers with its report, and again. */
parentPort?.on('message', (call: Call) => {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread, no window
  void reportOrder(call).then((report) => parentPort?.postMessage(report));
});
