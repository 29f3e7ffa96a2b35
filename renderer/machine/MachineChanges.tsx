import type { MachineComparison } from '../../core/session/compare-machines.ts';
import { BegunFindings } from '../document/BegunFindings.tsx';

/** What an edit of the machine does to the jigs of the order and to their files. */
export function MachineChanges({ comparison }: { readonly comparison: MachineComparison }) {
  const { jigs, changed, path, files, begun } = comparison;
  return (
    <>
      <p className="document-summary">
        {changed.length === 0
          ? `None of the ${jigs} jigs is built another way`
          : `${changed.length} of ${jigs} jigs change`}
      </p>
      <ul>
        <li>
          {path
            ? 'The lines of every cut move: write all files anew.'
            : 'The lines around a piece that stays do not move.'}
        </li>
        {files ? <li>Layers or the writing of DXF files change.</li> : null}
      </ul>
      <BegunFindings findings={begun} />
      {changed.length === 0 ? null : (
        <table>
          <thead>
            <tr>
              <th scope="col">Jig</th>
              <th scope="col">Kind</th>
              <th scope="col">Change</th>
            </tr>
          </thead>
          <tbody>
            {changed.map(({ id, kind, change }) => (
              <tr key={`${id} ${change}`}>
                <th scope="row">{id}</th>
                <td>{kind}</td>
                <td>{change}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
