import { parentPort } from 'node:worker_threads';
import { exportPart } from '../../core/files/export-part.ts';
import type { PartAnswer, PartTask } from './part-thread.ts';

/** So many answers go together: each message costs its time. */
const TOGETHER = 10;

/** A thread that writes the cut files of one order's parts, and ends. */
parentPort?.once('message', ({ parts, machine }: PartTask) => {
  let answers: PartAnswer[] = [];
  const send = (): void => {
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread, no window
    parentPort?.postMessage(answers);
    answers = [];
  };
  for (const part of parts) {
    const { value, findings } = exportPart(part, machine);
    if (value === null) answers.push({ value, findings });
    else {
      const { part: _known, ...files } = value;
      answers.push({ value: files, findings });
    }
    if (answers.length === TOGETHER) send();
  }
  send();
});
