import { NO_SOURCE } from '../no-source.ts';

/** A value of a document with its source. */
export interface AddedValue {
  readonly value: string;
  readonly source: string;
}

export const added = (value: string, source = NO_SOURCE): AddedValue => ({ value, source });
