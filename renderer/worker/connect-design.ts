import type { Finding } from '../../core/findings/finding.ts';
import type { BundleFile } from '../../core/bundle.ts';
import type { Draft } from '../../core/project/draft.ts';
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

/** Writes a file and says how large it is and what its hash is. */
export type WriteFile = (file: Pick<BundleFile, 'path' | 'text'>) => Promise<WrittenFile>;

/** The program's line to the worker that designs. */
export interface DesignClient {
  /** Designs a draft as soon as the worker is free; of several waiting drafts only the newest. */
  readonly design: (draft: Draft) => void;
  /** A part of the newest design; null when there is none of that id. */
  readonly part: (partId: string) => Promise<PartDetail | null>;
  /** Hands over the files of the newest draft one after another, the manifest last. */
  readonly exportAll: (
    onFile: WriteFile,
    onProgress: (done: number, of: number) => void,
    signal: AbortSignal,
  ) => Promise<ExportResult>;
  /** Whether a draft is waiting or being designed. */
  readonly isBusy: () => boolean;
}

interface RunningExport {
  readonly onFile: WriteFile;
  readonly onProgress: (done: number, of: number) => void;
  readonly end: (result: ExportResult) => void;
}

/**
 * Designs drafts at the other end of a line. `onDesigned` gets every design that comes back, each newer than the
 * one before; what did not change is the same object as before. `onFailed` gets faults of the program.
 */
export function connectDesign(
  port: Port<ToWorker, FromWorker>,
  onDesigned: (designed: Designed) => void,
  onFailed: (reason: string) => void,
): DesignClient {
  const parts = new Map<number, (detail: PartDetail | null) => void>();
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
      case 'designed':
        busy = false;
        designed = patchedDesigned(designed, message.patch);
        onDesigned(designed);
        sendNext();
        return;
      case 'part':
        parts.get(message.call)?.(message.detail);
        parts.delete(message.call);
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
      parts.get(call)?.(null);
      parts.delete(call);
      exports.get(call)?.end({ ended: 'failed', reason });
    }
    if (failed === null) return;
    busy = false;
    sendNext();
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
    part(partId) {
      calls += 1;
      const call = calls;
      return new Promise((resolve) => {
        parts.set(call, resolve);
        port.post({ kind: 'part', call, partId });
      });
    },
    async exportAll(onFile, onProgress, signal) {
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
        port.post({ kind: 'export', call });
      });
    },
    isBusy: () => busy,
  };
}
