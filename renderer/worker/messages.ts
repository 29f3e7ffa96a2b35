import type { ListedFile } from '../../core/files/manifest.ts';
import type { BundleFile } from '../../core/bundle.ts';
import type { Finding } from '../../core/findings/finding.ts';
import type { Draft, DraftRow } from '../../core/project/draft.ts';
import type { Designed, PartDetail } from '../../core/session/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { ListPatch, RecordPatch } from './patches.ts';

/** What is different in a draft; absent is as before. */
export interface DraftPatch {
  readonly rows?: ListPatch<DraftRow>;
  readonly fields: Omit<Partial<Draft>, 'rows'>;
  /** The draft has no date any more. */
  readonly undated?: true;
}

/** What is different in a design; absent is as before. */
export interface DesignedPatch {
  readonly revision: number;
  readonly findings?: ListPatch<Designed['findings'][number]>;
  readonly fits?: RecordPatch<DrawerFit>;
  readonly jigs?: ListPatch<Designed['jigs'][number]>;
  readonly uses?: ListPatch<Designed['uses'][number]>;
  readonly parts?: ListPatch<Designed['parts'][number]>;
}

/** What the worker is told. */
export type ToWorker =
  | { readonly kind: 'design'; readonly revision: number; readonly patch: DraftPatch }
  | { readonly kind: 'part'; readonly call: number; readonly partId: string }
  | { readonly kind: 'export'; readonly call: number }
  /** A file has been written. */
  | { readonly kind: 'listed'; readonly call: number; readonly file: WrittenFile }
  | { readonly kind: 'stop'; readonly call: number };

/** What the platform says of a file that it has written. */
export type WrittenFile = Pick<ListedFile, 'size' | 'sha256'>;

/** What the worker tells. */
export type FromWorker =
  | { readonly kind: 'designed'; readonly patch: DesignedPatch }
  | { readonly kind: 'part'; readonly call: number; readonly detail: PartDetail | null }
  | { readonly kind: 'progress'; readonly call: number; readonly done: number; readonly of: number }
  /** A file to be written; the worker waits until it is. */
  | { readonly kind: 'file'; readonly call: number; readonly file: Pick<BundleFile, 'path' | 'text'> }
  | { readonly kind: 'exported'; readonly call: number; readonly files: number }
  | { readonly kind: 'refused'; readonly call: number; readonly findings: readonly Finding[] }
  /** A fault of the program; `revision` when it was in a design, `call` when in an answer. */
  | {
      readonly kind: 'failed';
      readonly revision: number | null;
      readonly call: number | null;
      readonly reason: string;
    };

/** One end of the line between the two; a fake in tests. */
export interface Port<Out, In> {
  readonly post: (message: Out) => void;
  readonly listen: (receive: (message: In) => void) => void;
}
