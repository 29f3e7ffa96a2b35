import { useState } from 'react';
import type { LengthUnit } from '../../core/order/types.ts';
import type { FitComparison } from '../../core/session/compare-fits.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { BegunFindings } from '../document/BegunFindings.tsx';

/** How many drawers are listed at first. */
const SHOWN = 60;

interface FitChangesProps {
  readonly comparison: FitComparison;
  readonly unit: LengthUnit;
}

/** The drawers that an edit changes, each size before and after. */
export function FitChanges({ comparison, unit }: FitChangesProps) {
  const { drawers, changed, begun, ended } = comparison;
  const [showAll, setShowAll] = useState(false);
  const listed = showAll ? changed : changed.slice(0, SHOWN);
  return (
    <>
      <p className="document-summary">
        {changed.length === 0
          ? `No size of the ${drawers} drawers changes`
          : `${changed.length} of ${drawers} drawers change`}
      </p>
      {ended === 0 ? null : <p>✓ {ended === 1 ? 'One finding goes away.' : `${ended} findings go away.`}</p>}
      <BegunFindings findings={begun} />
      {changed.length === 0 ? null : (
        <table>
          <thead>
            <tr>
              <th scope="col">Drawer</th>
              <th scope="col">What</th>
              <th scope="col">Old</th>
              <th scope="col">New</th>
            </tr>
          </thead>
          {listed.map(({ rowId, name, fit, sizes }) => (
            <tbody key={rowId}>
              {fit === 'changed' ? (
                sizes.map(({ what, before, after }, index) => (
                  <tr key={what}>
                    {index === 0 ? (
                      <th scope="rowgroup" rowSpan={sizes.length}>
                        {name}
                      </th>
                    ) : null}
                    <td>{what}</td>
                    <td className="app-figure">{formatLength(before, unit)}</td>
                    <td className="app-figure">{formatLength(after, unit)}</td>
                  </tr>
                ))
              ) : (
                <tr>
                  <th scope="row">{name}</th>
                  <td colSpan={3}>{fit === 'lost' ? '✕ can be fitted no more' : '✓ can be fitted now'}</td>
                </tr>
              )}
            </tbody>
          ))}
        </table>
      )}
      {listed.length === changed.length ? null : (
        <button type="button" onClick={() => setShowAll(true)}>
          List all {changed.length} drawers
        </button>
      )}
    </>
  );
}
