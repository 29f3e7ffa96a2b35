/** What stands beside a value that has no source. */
export const PRACTICE = 'common practice, no source';

/** A value of a document with its source. */
export interface AddedValue {
  readonly value: string;
  readonly source: string;
}

export const added = (value: string, source = PRACTICE): AddedValue => ({ value, source });
