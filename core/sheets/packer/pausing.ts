/** Long work that may be left off, or waited with, at any of its pauses; what it returns does not depend on them. */
export type Pausing<Result> = Generator<undefined, Result, undefined>;

/** The result of work done in one go. */
export function withoutPause<Result>(work: Pausing<Result>): Result {
  for (;;) {
    const { done, value } = work.next();
    if (done === true) return value;
  }
}
