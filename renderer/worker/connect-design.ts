import type { Finding } from '../../core/findings/finding.ts';
import type { BundleFile } from '../../core/bundle.ts';
import type { OutputChoice } from '../../core/files/output-choice.ts';
import type { OrderRework } from '../../core/gap-view/order-rework.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { FitComparison } from '../../core/session/compare-fits.ts';
import type { MachineComparison } from '../../core/session/compare-machines.ts';
import type { StudyOutcome } from '../../core/jigs/sharing/study-jigs.ts';
import type { Designed, PartDetail } from '../../core/session/types.ts';
import { NO_DESIGN, patchedDesigned } from './designed-patch.ts';
import { draftPatch } from './draft-patch.ts';
import type { FromWorker, Port, ToWorker, WrittenFile } from './messages.ts';

/** How an export ended. */
export type ExportResult =
  | { readonly ended: 'done'; readonly files: number }
  | { readonly ended: 'stopped' }
  /** Nothing may be written: these are why. */
  | { readonly ended: 'refused'; readonly findings: readonly Finding[] }
  /** A file could not be written, or the program failed. */
  | { readonly ended: 'failed'; readonly reason: string };

/** The rework that a design's fronts will need, and what it was counted from. */
export interface CountedRework {
  readonly of: Pick<Designed, 'budgets' | 'uses'>;
  /** Null where the design has no front that can be counted. */
  readonly answer: OrderRework | null;
}

/** Writes a file and says how large it is and what its hash is. */
export type WriteFile = (file: Pick<BundleFile, 'path' | 'content'>) => Promise<WrittenFile>;

/** The program's line to the worker that designs. */
export interface DesignClient {
  /** Designs a draft as soon as the worker is free; of several waiting drafts only the newest. */
  readonly design: (draft: Draft) => void;
  /** A part of the newest design; null when there is none of that id. */
  readonly part: (partId: string) => Promise<PartDetail | null>;
  /** What another shop standard would do to the newest draft; null when the program failed at it. */
  readonly tryStandard: (standard: ShopStandard) => Promise<FitComparison | null>;
  /** What another machine would do to the newest draft; null when the program failed at it. */
  readonly tryMachine: (machine: MachineProfile) => Promise<MachineComparison | null>;
  /** How many fronts of the newest draft will need rework; null when the program failed at it. */
  readonly rework: () => Promise<CountedRework | null>;
  /** What sharing jigs would come to in the newest draft; null when the program failed at it. */
  readonly studyJigs: () => Promise<StudyOutcome | null>;
  /** Hands over the chosen files of the newest draft one after another, the manifest last. */
  readonly exportAll: (
    onFile: WriteFile,
    onProgress: (done: number, of: number) => void,
    signal: AbortSignal,
    options?: ExportOptions,
  ) => Promise<ExportResult>;
  /** Whether a draft is waiting or being designed. */
  readonly isBusy: () => boolean;
}

export interface ExportOptions {
  /** The usual files if left out. */
  readonly choice?: OutputChoice;
  /** Tells the draft whose files they are, when that is settled. */
  readonly onBegun?: (draft: Draft | null) => void;
}

interface RunningExport {
  readonly onFile: WriteFile;
  readonly onProgress: (done: number, of: number) => void;
  readonly end: (result: ExportResult) => void;
}

type Waiting<T> = Map<number, (value: T) => void>;

function answer<T>(waitingFor: Waiting<T>, call: number, value: T): void {
  waitingFor.get(call)?.(value);
  waitingFor.delete(call);
}

/**
 * Designs drafts at the other end of a line. `onDesigned` gets every design that comes back, each newer than the
 * one before; what did not change is the same object as before. `onFailed` gets faults of the program. The worker
 * goes on from the beginning of a design to the rest when `shown` says that it is on the screen, so that the two do
 * not share the machine.
 */
export function connectDesign(
  port: Port<ToWorker, FromWorker>,
  onDesigned: (designed: Designed) => void,
  onFailed: (reason: string) => void,
  shown: () => Promise<void> = async () => undefined,
): DesignClient {
  const parts: Waiting<PartDetail | null> = new Map();
  const standards: Waiting<FitComparison | null> = new Map();
  const machines: Waiting<MachineComparison | null> = new Map();
  const reworks: Waiting<CountedRework | null> = new Map();
  const studies: Waiting<StudyOutcome | null> = new Map();
  const exports = new Map<number, RunningExport>();
  let idle: (() => void)[] = [];
  let calls = 0;
  let revision = 0;
  let known: Draft | null = null;
  let waiting: Draft | null = null;
  let busy = false;
  let designed = NO_DESIGN;

  function sendNext(): void {
    if (busy) return;
    if (waiting === null || waiting === known) {
      waiting = null;
      for (const go of idle) go();
      idle = [];
      return;
    }
    busy = true;
    revision += 1;
    port.post({ kind: 'design', revision, patch: draftPatch(known, waiting) });
    known = waiting;
    waiting = null;
  }

  async function write(call: number, file: Parameters<WriteFile>[0]): Promise<void> {
    const running = exports.get(call);
    if (running === undefined) return;
    try {
      const { size, sha256 } = await running.onFile(file);
      port.post({ kind: 'listed', call, file: { size, sha256 } });
    } catch (problem) {
      port.post({ kind: 'stop', call });
      const reason = problem instanceof Error ? problem.message : String(problem);
      running.end({ ended: 'failed', reason });
    }
  }

  port.listen((message) => {
    switch (message.kind) {
      case 'begun':
        return;
      case 'looked':
        designed = patchedDesigned(designed, message.patch);
        onDesigned(designed);
        void shown().then(() => port.post({ kind: 'go-on' }));
        return;
      case 'designed':
        busy = false;
        designed = patchedDesigned(designed, message.patch);
        onDesigned(designed);
        sendNext();
        return;
      case 'part':
        answer(parts, message.call, message.detail);
        return;
      case 'tried-standard':
        answer(standards, message.call, message.comparison);
        return;
      case 'tried-machine':
        answer(machines, message.call, message.comparison);
        return;
      case 'reworked':
        // A newer design would be answered after this.
        answer(reworks, message.call, { of: designed, answer: message.rework });
        return;
      case 'studied-jigs':
        answer(studies, message.call, message.outcome);
        return;
      case 'file':
        void write(message.call, message.file);
        return;
      case 'progress':
        exports.get(message.call)?.onProgress(message.done, message.of);
        return;
      case 'exported':
        exports.get(message.call)?.end({ ended: 'done', files: message.files });
        return;
      case 'refused':
        exports.get(message.call)?.end({ ended: 'refused', findings: message.findings });
        return;
      case 'failed':
        fail(message);
    }
  });

  function fail({ revision: failed, call, reason }: FromWorker & { readonly kind: 'failed' }): void {
    onFailed(reason);
    if (call !== null) {
      answer(parts, call, null);
      answer(standards, call, null);
      answer(machines, call, null);
      answer(studies, call, null);
      answer(reworks, call, null);
      exports.get(call)?.end({ ended: 'failed', reason });
    }
    if (failed === null) return;
    busy = false;
    sendNext();
  }

  /** Asks the worker something that has one answer. */
  function ask<T>(waitingFor: Waiting<T>, message: (call: number) => ToWorker): Promise<T> {
    calls += 1;
    const call = calls;
    return new Promise((resolve) => {
      waitingFor.set(call, resolve);
      port.post(message(call));
    });
  }

  const whenIdle = (): Promise<void> =>
    new Promise((resolve) => {
      if (busy || waiting !== null) idle.push(resolve);
      else resolve();
    });

  return {
    design(draft) {
      waiting = draft;
      sendNext();
    },
    part: (partId) => ask(parts, (call) => ({ kind: 'part', call, partId })),
    async tryStandard(standard) {
      await whenIdle();
      return ask(standards, (call) => ({ kind: 'try-standard', call, standard }));
    },
    async tryMachine(machine) {
      await whenIdle();
      return ask(machines, (call) => ({ kind: 'try-machine', call, machine }));
    },
    async rework() {
      await whenIdle();
      return ask(reworks, (call) => ({ kind: 'rework', call }));
    },
    async studyJigs() {
      await whenIdle();
      return ask(studies, (call) => ({ kind: 'study-jigs', call }));
    },
    async exportAll(onFile, onProgress, signal, { choice, onBegun } = {}) {
      await whenIdle();
      if (signal.aborted) return { ended: 'stopped' };
      calls += 1;
      const call = calls;
      return new Promise((resolve) => {
        const stop = (): void => {
          port.post({ kind: 'stop', call });
          end({ ended: 'stopped' });
        };
        const end = (result: ExportResult): void => {
          signal.removeEventListener('abort', stop);
          exports.delete(call);
          resolve(result);
        };
        exports.set(call, { onFile, onProgress, end });
        signal.addEventListener('abort', stop);
        onBegun?.(known);
        port.post({ kind: 'export', call, ...(choice === undefined ? {} : { choice }) });
      });
    },
    isBusy: () => busy,
  };
}
