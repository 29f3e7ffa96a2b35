import { drawerName } from '../../core/fit/drawer-name.ts';
import { adjustWords } from '../../core/jigs/sharing/dial-way.ts';
import { settingsText } from '../../core/jigs/settings-text.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Designed, DraftUse } from '../../core/session/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

interface ServedJigsProps {
  readonly designed: Designed;
  readonly unit: LengthUnit;
  readonly onRow: (rowId: string) => void;
}

/** Every jig that sets an overhang, with its drawers and what each of them is left to adjust. */
export function ServedJigs({ designed, unit, onRow }: ServedJigsProps) {
  const { jigs, uses, fits } = designed;
  const served = jigs
    .map((jig) => ({ jig, own: uses.filter(({ jigId }) => jigId === jig.id) }))
    .filter(({ own }) => own.length > 0);
  if (served.length === 0) return <p>There are no jigs yet.</p>;
  const drawersOf = (own: readonly DraftUse[]): number =>
    [...new Set(own.map(({ rowId }) => rowId))].reduce((sum, id) => sum + (fits[id]?.drawer.qty ?? 0), 0);
  return (
    <ul className="jig-plan-jigs">
      {served.map(({ jig, own }) => (
        <li key={jig.id}>
          <details>
            <summary>
              <strong>{jig.id}</strong> {jig.kind}, {settingsText(jig, unit)}: {counted(drawersOf(own))}
              {mostWords(own, unit)}
            </summary>
            <ul>
              {own.map((use) => {
                const fit = fits[use.rowId];
                return fit === undefined ? null : (
                  <li key={`${use.rowId} ${use.edge}`}>
                    <button type="button" className="jig-plan-row" onClick={() => onRow(use.rowId)}>
                      {drawerName(fit.drawer)}
                      {fit.drawer.qty > 1 ? ` × ${fit.drawer.qty}` : ''}
                    </button>
                    , {use.edge} edge: {moveWords(use, unit)}
                  </li>
                );
              })}
            </ul>
          </details>
        </li>
      ))}
    </ul>
  );
}

const counted = (drawers: number): string => `${drawers} ${drawers === 1 ? 'drawer' : 'drawers'}`;

/** `, 0.8 mm at most to adjust` */
function mostWords(own: readonly DraftUse[], unit: LengthUnit): string {
  const most = Math.max(...own.map(({ adjustment }) => Math.abs(adjustment)));
  return most === 0 ? '' : `, ${formatLength(most, unit)} at most to adjust`;
}

/** `move the front 0.8 mm down` */
function moveWords({ edge, adjustment }: DraftUse, unit: LengthUnit): string {
  const words = adjustWords(edge, adjustment, unit);
  return words === '' ? 'nothing more to adjust' : `move the front ${words}`;
}
