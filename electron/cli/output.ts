/** Where a command writes: results to `out`, progress and problems to `err`. */
export interface Output {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

export const EXIT = { ok: 0, faults: 1, badCall: 2 } as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** The call itself is wrong: an unknown option, a file that is not there. Told to the user, exit code 2. */
export class BadCall extends Error {}
