import type { Finding } from './findings/finding.ts';
import type { ExportReport } from './files/drawing.ts';

/** A file of an order's folder, before it is written. */
export interface BundleFile {
  readonly path: string;
  /** Text is written as UTF-8. */
  readonly content: string | Uint8Array;
  readonly report?: ExportReport;
}

export interface BundleStep {
  /** Parts written so far, of all that are. */
  readonly done: number;
  readonly of: number;
  readonly files: readonly BundleFile[];
  readonly findings: readonly Finding[];
}
