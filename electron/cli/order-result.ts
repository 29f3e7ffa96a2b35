/** What became of one order of a call; all that is kept of it. */
export interface OrderResult {
  /** The path that the call gives. */
  readonly order: string;
  /** The folder or zip of its files. */
  readonly place: string;
  readonly state: 'made' | 'unchanged' | 'failed';
  readonly drawers: number;
  readonly jigs: number;
  readonly parts: number;
  readonly files: number;
  readonly errors: number;
  readonly warnings: number;
  /** Why it failed, where no finding says it. */
  readonly reason: string | null;
  readonly seconds: number;
}

/** A result with what is to be said about it once. */
export interface OrderReport {
  readonly result: OrderResult;
  /** Its findings, a line each. */
  readonly findings: readonly string[];
  /** The jigs of an order that was made, for someone who made this one only. */
  readonly text: string;
}

/** Of an order of which nothing was made. */
export const NOTHING = {
  drawers: 0,
  jigs: 0,
  parts: 0,
  files: 0,
  errors: 0,
  warnings: 0,
  reason: null,
} as const;
