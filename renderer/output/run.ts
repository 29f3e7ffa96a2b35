/** How the writing of the files stands. */
export interface OutputRun {
  readonly state: 'idle' | 'running' | 'done' | 'failed' | 'cancelled';
  /** Parts written so far, of all. */
  readonly done: number;
  readonly of: number;
  /** How many files were written, once it is done. */
  readonly files?: number;
  /** Where the folder is, once it is done. */
  readonly place?: string;
  /** Where a browser fetches it from. */
  readonly download?: string;
  /** Why it failed. */
  readonly reason?: string;
}

/** What has happened since the files were begun: nothing, an edit of the document, or only another choice of files. */
export type SinceRun = 'nothing' | 'edited' | 'other choice';
