/** How the writing of the files stands. */
export interface OutputRun {
  readonly state: 'idle' | 'running' | 'done' | 'failed' | 'cancelled';
  /** Parts written so far, of all. */
  readonly done: number;
  readonly of: number;
  /** Where the folder is, once it is done. */
  readonly place?: string;
  /** Where a browser fetches it from. */
  readonly download?: string;
  /** Why it failed. */
  readonly reason?: string;
}
