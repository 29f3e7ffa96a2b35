/** One problem of the user's data: what is wrong, where, and what would be accepted. */
export interface Finding {
  /** `stage/what`, for example `order/length` or `fit/gap-negative`. */
  readonly code: string;
  /** An error stops the export; a warning is shown beside what it names. */
  readonly severity: 'error' | 'warning';
  /** A whole sentence for the person who must act; names the numbers. */
  readonly message: string;
  readonly at: Place;
  /** The numbers and words of the message, for programs. Lengths in millimetres. */
  readonly values: Readonly<Record<string, string | number>>;
}

/** Where a finding stands; as much of it as is known. */
export interface Place {
  readonly file?: string;
  /** Row of the file as a spreadsheet counts it: the header is row 1. */
  readonly row?: number;
  /** Column by the name in the header. */
  readonly column?: string;
  /** Path of a field in a JSON document, for example `styles.inset.edges.left`. */
  readonly field?: string;
  /** `cabinet / drawer` */
  readonly drawer?: string;
}

/** What every stage returns: its value, and what it found on the way. */
export interface Outcome<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
}
