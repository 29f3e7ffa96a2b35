import type { DocumentEdit } from './edit.ts';
import type { Path } from './json.ts';
import { SourcedRow } from './SourcedRow.tsx';

/** A field, what it is called, and a hint if the name is not enough. */
export type RowLabel = readonly [field: string | readonly string[], label: string, hint?: string];

interface SourcedRowsProps {
  readonly edit: DocumentEdit;
  /** Of the record that the fields are in. */
  readonly path: Path;
  readonly rows: readonly RowLabel[];
}

/** Rows of a table of values that stand in one record. */
export function SourcedRows({ edit, path, rows }: SourcedRowsProps) {
  return rows.map(([field, label, hint]) => (
    <SourcedRow
      key={label}
      edit={edit}
      path={[...path, ...(typeof field === 'string' ? [field] : field)]}
      label={label}
      {...(hint === undefined ? {} : { hint })}
    />
  ));
}
