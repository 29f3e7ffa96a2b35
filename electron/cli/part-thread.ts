import { availableParallelism } from 'node:os';
import { setImmediate } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import type { PartExporter } from '../../core/bundle.ts';
import { exportPart, type ExportedPart } from '../../core/files/export-part.ts';
import type { Outcome } from '../../core/findings/finding.ts';
import type { Jig } from '../../core/jigs/types.ts';
import type { Workshop } from '../../core/pipeline.ts';
import { claim, newClaims, type Claims } from './claims.ts';
import { threadFile } from './worker-lane.ts';

/** What the thread gets: jigs, for they are small beside their parts, which it makes of them once more. */
export interface PartTask extends Pick<Workshop, 'machine' | 'font'> {
  readonly jigs: readonly Jig[];
  /** One task for each part of the jigs. */
  readonly claims: Claims;
}

/** What a part came to; the part itself is not sent back. */
export type PartAnswer = Outcome<Omit<ExportedPart, 'part'> | null>;

/** What parts that follow each other from this place on came to. */
export interface PartAnswers {
  readonly first: number;
  readonly answers: readonly PartAnswer[];
}

/** A thread that writes the cut files of one order while its paper is printed here. */
export interface PartThread {
  /** The thread begins at once with the first part; who takes from it and would wait helps from the last on. */
  readonly exportParts: PartExporter;
  /** Ends the thread, whatever it is at. */
  readonly close: () => Promise<void>;
}

/** An order of fewer lines is done sooner than a thread has begun. */
const WORTH_A_THREAD = 12;

/** A thread for an order of so many lines; null where it is short, there is one core, or no bundle that has it. */
export function partThread(lines: number, jobs = availableParallelism()): PartThread | null {
  const file = jobs < 2 || lines < WORTH_A_THREAD ? null : threadFile('part-worker');
  return file === null ? null : openThread(file);
}

function openThread(file: string): PartThread {
  const worker = new Worker(file);
  const ready = new Map<number, PartAnswer>();
  let failure: { readonly problem: unknown } | null = null;
  let wake = (): void => undefined;
  const fail = (problem: unknown): void => {
    failure ??= { problem };
    wake();
  };
  worker.on('message', ({ first, answers }: PartAnswers) => {
    for (const [index, answer] of answers.entries()) ready.set(first + index, answer);
    wake();
  });
  worker.on('error', fail);
  worker.on('exit', (code) => fail(new Error(`the thread that writes parts ended with code ${code}`)));
  const somethingNew = (): Promise<void> =>
    new Promise((resolve) => {
      wake = resolve;
    });

  return {
    exportParts({ parts, jigs }, { machine, font }) {
      const claims = newClaims(parts.length);
      // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread, no window
      worker.postMessage({ jigs, machine, font, claims } satisfies PartTask);
      const left = parts.map((part, place) => ({ part, place }));
      /** Exports the last part that nobody has begun; false when there is none. */
      const help = (): boolean => {
        const last = left.pop();
        if (last === undefined || !claim(claims, last.place)) return false;
        ready.set(last.place, exportPart(last.part, machine));
        return true;
      };
      async function* inOrder(): AsyncGenerator<Outcome<ExportedPart | null>> {
        for (const [place, part] of parts.entries()) {
          let answer = ready.get(place);
          while (answer === undefined) {
            if (failure !== null) throw failure.problem;
            await (help() ? setImmediate() : somethingNew());
            answer = ready.get(place);
          }
          ready.delete(place);
          const { value, findings } = answer;
          yield { value: value === null ? null : { ...value, part }, findings };
        }
      }
      return inOrder();
    },
    async close() {
      await worker.terminate();
    },
  };
}
