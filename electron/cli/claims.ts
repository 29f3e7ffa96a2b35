/** Which of a number of tasks are taken: known to two threads, so that none is done twice. */
export type Claims = Int32Array<SharedArrayBuffer>;

export const newClaims = (tasks: number): Claims =>
  new Int32Array(new SharedArrayBuffer(tasks * Int32Array.BYTES_PER_ELEMENT));

/** Takes a task, counted from 0; false where it has been taken. */
export const claim = (claims: Claims, task: number): boolean => Atomics.exchange(claims, task, 1) === 0;
