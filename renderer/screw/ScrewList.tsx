import type { ScrewPlace } from '../../core/fastening/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { tightestMargin } from '../../core/fastening/margins.ts';
import type { ShownScrew } from '../../core/screw-section/shown-screws.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { roundTo } from '../../core/units/tolerances.ts';

interface ScrewListProps {
  readonly screws: readonly ShownScrew[];
  readonly picked: number;
  readonly unit: LengthUnit;
  readonly onPick: (index: number) => void;
}

/** The screws of the drawer by their corner, with the angle and the tightest margin of each. */
export const ScrewList = ({ screws, picked, unit, onPick }: ScrewListProps) => (
  <nav className="parts-list" aria-label="Screws of the drawer">
    <h3>Screws</h3>
    <p>{screws.length} of this drawer</p>
    <ul>
      {screws.map(({ place, possible }, index) => {
        const tightest = tightestMargin(place.margins);
        return (
          <li key={`${placeName(place)} ${possible}`}>
            <button type="button" aria-current={index === picked} onClick={() => onPick(index)}>
              <span className="parts-list-name">
                {possible ? '' : '✕ '}
                {placeName(place)}
              </span>
              <span className="parts-list-make">
                {place.angle === 0 ? 'straight' : `leans ${roundTo(place.angle, 1)}°`}
                {possible
                  ? tightest === null
                    ? ''
                    : `, ${formatLength(roundTo(tightest.over, 2), unit)} to spare`
                  : ', not possible'}
              </span>
            </button>
          </li>
        );
      })}
    </ul>
  </nav>
);

/** `Bottom, cabinet's left`, and which one of its row when it is not at the corner. */
const placeName = ({ corner, index }: ScrewPlace): string =>
  `${corner.end === 'bottom' ? 'Bottom' : 'Top'}, cabinet's ${corner.hand}${index === 0 ? '' : `, ${index + 1}`}`;
