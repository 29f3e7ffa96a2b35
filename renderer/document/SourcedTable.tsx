import type { ReactNode } from 'react';
import './document.css';

interface SourcedTableProps {
  readonly caption: string;
  readonly children: ReactNode;
}

/** A table of values with their sources. */
export function SourcedTable({ caption, children }: SourcedTableProps) {
  return (
    <table className="document-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Value</th>
          <th scope="col">Source</th>
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  );
}
