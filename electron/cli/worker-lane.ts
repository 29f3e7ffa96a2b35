import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { Call } from './arguments.ts';
import type { Lane } from './lanes.ts';
import type { OrderReport } from './order-result.ts';

/** A thread of the bundle, which lies beside it or above its chunks; null when the program runs from source. */
export const threadFile = (name: 'worker' | 'part-worker'): string | null =>
  [`./${name}.js`, `../${name}.js`]
    .map((path) => fileURLToPath(new URL(path, import.meta.url)))
    .find((path) => existsSync(path)) ?? null;

interface Answer {
  readonly resolve: (report: OrderReport) => void;
  readonly reject: (problem: unknown) => void;
}

/** A thread that makes one order at a time. */
export function workerLane(file: string): Lane<Call, OrderReport> {
  let answer: Answer | null = null;
  const worker = new Worker(file);
  worker.on('message', (report: OrderReport) => answer?.resolve(report));
  worker.on('error', (problem) => answer?.reject(problem));
  worker.on('exit', (code) => answer?.reject(new Error(`its thread ended with code ${code}`)));
  return {
    do: (call) =>
      new Promise((resolve, reject) => {
        answer = { resolve, reject };
        // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread, no window
        worker.postMessage(call);
      }),
    async close() {
      await worker.terminate();
    },
  };
}
