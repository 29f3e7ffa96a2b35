import type { FolderFile } from '../../core/files/folder-contents.ts';
import type { PartSummary } from '../../core/session/types.ts';

interface FileTableProps {
  readonly files: readonly FolderFile[];
  readonly parts: readonly PartSummary[];
  readonly jigs: number;
}

/** What will be written, and how much it is. */
export function FileTable({ files, parts, jigs }: FileTableProps) {
  const pieces = parts.reduce((sum, { copies }) => sum + copies, 0);
  return (
    <section className="document-section" aria-labelledby="output-files">
      <h3 id="output-files">What will be written</h3>
      <dl className="output-facts output-totals">
        {[
          ['Files', files.length],
          ['Jigs', jigs],
          ['Parts', parts.length],
          ['Pieces to cut', pieces],
        ].map(([what, count]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd className="app-figure">{count}</dd>
          </div>
        ))}
      </dl>
      <div className="output-scroll" role="group" aria-label="List of files" tabIndex={0}>
        <table className="output-table">
          <thead>
            <tr>
              <th scope="col">File</th>
              <th scope="col">Kind</th>
              <th scope="col">Part</th>
              <th scope="col">Copies</th>
            </tr>
          </thead>
          <tbody>
            {files.map(({ path, kind, part, copies }) => (
              <tr key={path}>
                <th scope="row">{path}</th>
                <td>{kind}</td>
                <td>{part ?? 'whole order'}</td>
                <td className="app-figure">{copies ?? '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
