import type { Finding } from '../../findings/finding.ts';

/** Tells what is wrong at a field of the standard; `what` is a clause with what would be accepted. */
export type Fault = (code: string, field: string, what: string) => Finding;
