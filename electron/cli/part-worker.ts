import { parentPort } from 'node:worker_threads';
import { exportPart } from '../../core/files/export-part.ts';
import { partsOfJig } from '../../core/parts/parts-of.ts';
import type { Part } from '../../core/parts/types.ts';
import { claim } from './claims.ts';
import type { PartAnswer, PartAnswers, PartTask } from './part-thread.ts';

/** So many answers go together: each message costs its time. */
const TOGETHER = 5;

/** A thread that writes the cut files of one order's parts from the first on, up to those that are taken, and ends. */
parentPort?.once('message', (task: PartTask) => {
  let first = 0;
  let answers: PartAnswer[] = [];
  const send = (): void => {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread, no window
    parentPort?.postMessage({ first, answers } satisfies PartAnswers);
    first += answers.length;
    answers = [];
  };
  for (const part of partsOf(task)) {
    if (!claim(task.claims, first + answers.length)) break;
    const { value, findings } = exportPart(part, task.machine);
    if (value === null) answers.push({ value, findings });
    else {
      const { part: _known, ...files } = value;
      answers.push({ value: files, findings });
    }
    if (answers.length === TOGETHER) send();
  }
  send();
});

/** A jig at a time, so that the first part is not kept waiting for the last. */
function* partsOf({ jigs, machine, font }: PartTask): Generator<Part> {
  for (const jig of jigs) yield* partsOfJig(jig, machine, font).value;
}
