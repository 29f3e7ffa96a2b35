import type { Designed } from '../../core/session/types.ts';
import { connectDesign, type DesignClient } from './connect-design.ts';
import { spawnWorker } from './spawn-worker.ts';

export type { DesignClient, ExportResult, WriteFile } from './connect-design.ts';

/** Starts the worker that designs; `onDesigned` gets every design, `onFailed` the faults of the program. */
export const createDesignClient = (
  onDesigned: (designed: Designed) => void,
  onFailed: (reason: string) => void = (reason) => console.error(reason),
  shown?: () => Promise<void>,
): DesignClient => connectDesign(spawnWorker(), onDesigned, onFailed, shown);
