import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { PartExporter } from '../../core/bundle.ts';
import type { ExportedPart } from '../../core/files/export-part.ts';
import type { Outcome } from '../../core/findings/finding.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { Part } from '../../core/parts/types.ts';
import { threadFile } from './worker-lane.ts';

export interface PartTask {
  readonly parts: readonly Part[];
  readonly machine: MachineProfile;
}

/** What a part came to; the part itself is not sent back. */
export type PartAnswer = Outcome<Omit<ExportedPart, 'part'> | null>;

/** Fewer parts are written here sooner than a thread has begun. */
const WORTH_A_THREAD = 60;

/**
 * An exporter that writes the cut files of a long order on a thread of its own, while its paper is printed here;
 * undefined where there is no second core, or the program runs from source.
 */
export function partThread(jobs = availableParallelism()): PartExporter | undefined {
  const file = jobs < 2 ? null : threadFile('part-worker');
  return file === null ? undefined : (parts, machine) => onThread(file, parts, machine);
}

/** Whether parts are so many that a thread pays. */
export const isWorthAThread = (parts: readonly Part[]): boolean => parts.length >= WORTH_A_THREAD;

/** The thread begins at once, and runs ahead of what is taken from it. */
function onThread(
  file: string,
  parts: readonly Part[],
  machine: MachineProfile,
): AsyncIterable<Outcome<ExportedPart | null>> {
  const worker = new Worker(file);
  const ready: PartAnswer[] = [];
  let failure: unknown;
  let hasFailed = false;
  let wake = (): void => undefined;
  const fail = (problem: unknown): void => {
    hasFailed = true;
    failure ??= problem;
    wake();
  };
  worker.on('message', (answers: readonly PartAnswer[]) => {
    ready.push(...answers);
    wake();
  });
  worker.on('error', fail);
  worker.on('exit', (code) => fail(new Error(`the thread that writes parts ended with code ${code}`)));
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread, no window
  worker.postMessage({ parts, machine } satisfies PartTask);

  async function* taken(): AsyncGenerator<Outcome<ExportedPart | null>> {
    try {
      for (const part of parts) {
        let answer = ready.shift();
        while (answer === undefined) {
          if (hasFailed) throw failure;
          await new Promise<void>((resolve) => {
            wake = resolve;
          });
          answer = ready.shift();
        }
        const { value, findings } = answer;
        yield { value: value === null ? null : { part, ...value }, findings };
      }
    } finally {
      await worker.terminate();
    }
  }
  return taken();
}
