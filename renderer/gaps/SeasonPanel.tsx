import type { SeasonBudget } from '../../core/fit/seasons/types.ts';
import { seasonTable, staysPut } from '../../core/gap-view/season-table.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

interface SeasonPanelProps {
  /** Null where the shop standard does not know the front's wood. */
  readonly season: SeasonBudget | null;
  readonly unit: LengthUnit;
}

/** The gaps of a front that moves, in dry air, as fitted and in damp air. */
export const SeasonPanel = ({ season, unit }: SeasonPanelProps) => (
  <section className="gaps-panel" aria-labelledby="gaps-seasons">
    <h3 id="gaps-seasons">Over the year</h3>
    {season === null ? (
      <p>The shop standard does not have this front’s wood, so its movement is not known.</p>
    ) : staysPut(season) ? (
      <p>This front is a panel of sheet goods: it keeps its size, and its gaps, over the year.</p>
    ) : (
      <SeasonTable season={season} unit={unit} />
    )}
  </section>
);

function SeasonTable({ season, unit }: { readonly season: SeasonBudget; readonly unit: LengthUnit }) {
  const rows = seasonTable(season, unit);
  const { fittedAt, dry, damp, fit } = season;
  const length = (mm: number): string => formatLength(mm, unit);
  if (rows.length === 0) {
    return (
      <p>
        It moves from {length(dry.frontW)} × {length(dry.frontH)} in dry air to {length(damp.frontW)} ×{' '}
        {length(damp.frontH)} in damp air, but laps all round and shows no gap.
      </p>
    );
  }
  return (
    <>
      <table className="gaps-table">
        <caption>
          Gaps of a front that is {length(fit.frontW)} × {length(fit.frontH)} as fitted
        </caption>
        <thead>
          <tr>
            <th scope="col">Edge</th>
            <th scope="col">Dry air, wood at {percent(dry.moisture)}</th>
            <th scope="col">As fitted, {percent(fittedAt)}</th>
            <th scope="col">Damp air, {percent(damp.moisture)}</th>
            <th scope="col">Fit it with</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ edge, dry: inDry, fitted, damp: inDamp, recommended }) => (
            <tr key={edge}>
              <th scope="row">{edge}</th>
              {[inDry, fitted, inDamp].map((gap, index) => (
                <td key={index === 0 ? 'dry' : index === 1 ? 'fitted' : 'damp'} className="app-figure">
                  {gap < 0 ? `✕ binds by ${length(-gap)}` : length(gap)}
                </td>
              ))}
              <td className="app-figure">{recommended === null ? 'as it is' : `⚠ ${length(recommended)}`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

const percent = (moisture: number): string => `${moisture.toFixed(1)} %`;
