import { setFlagsFromString } from 'node:v8';

/** Bytes of bytecode that a function has run before V8 considers to optimise it; its own choice is 67,584. */
const BUDGET = 1_000_000;

/**
 * Lets V8 wait longer before it optimises a function. A run of seconds ends before much of that pays: at V8's own
 * choice a third of the processor time of a thousand drawers went into it. Longer runs soon reach the budget.
 * It holds for all threads that begin later, and changes nothing but times.
 */
export const compileLate = (): void => setFlagsFromString(`--interrupt-budget=${BUDGET}`);
