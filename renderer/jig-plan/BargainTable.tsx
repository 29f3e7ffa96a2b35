import type { Bargain } from '../../core/jigs/sharing/picked-point.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

interface BargainTableProps {
  readonly offered: readonly Bargain[];
  readonly picked: Bargain | undefined;
  readonly unit: LengthUnit;
}

/** The numbers of the chart. */
export function BargainTable({ offered, picked, unit }: BargainTableProps) {
  return (
    // Focusable, so that it can be scrolled by keys.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <div className="jig-plan-scroll" role="group" aria-label="Numbers of the chart" tabIndex={0}>
      <table className="document-table">
        <thead>
          <tr>
            <th scope="col">Jigs</th>
            <th scope="col">To adjust in all</th>
            <th scope="col">At most</th>
            <th scope="col">Picked</th>
          </tr>
        </thead>
        <tbody>
          {offered.map((bargain) => (
            <tr
              key={`${bargain.sharing}`}
              aria-current={bargain === picked ? 'true' : undefined}
              className={bargain === picked ? 'jig-plan-picked' : ''}
            >
              <th scope="row">
                {bargain.jigs}
                {bargain.sharing === 'each' ? ', each its own' : ''}
              </th>
              <td>{formatLength(bargain.total, unit)}</td>
              <td>{formatLength(bargain.largest, unit)}</td>
              <td>{bargain === picked ? 'yes' : ''}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
