import type { FrontCorner } from '../../core/fit/budget/places.ts';
import { cornerWords } from '../../core/fit/dial-in/readings.ts';
import type { SeenGaps } from '../../core/fit/dial-in/types.ts';
import { readingOf } from '../../core/gap-view/with-reading.ts';
import type { Edge, LengthUnit } from '../../core/order/types.ts';
import { GapField } from './GapField.tsx';

/** A place where a gap is read. */
export interface ReadPlace {
  readonly edge: Edge;
  readonly corner: FrontCorner;
}

interface CornerFieldsProps {
  readonly corner: FrontCorner;
  /** The edges that show a gap there. */
  readonly edges: readonly Edge[];
  readonly seen: SeenGaps;
  readonly unit: LengthUnit;
  /** A gap in mm; null when it is taken out. */
  readonly onReading: (edge: Edge, mm: number | null) => void;
  /** The place whose field is typed in; null when none is. */
  readonly onReached: (place: ReadPlace | null) => void;
}

/** What was read at one corner of the front. */
export const CornerFields = ({ corner, edges, seen, unit, onReading, onReached }: CornerFieldsProps) => (
  <fieldset className={`gaps-corner gaps-${corner}`}>
    <legend>{capital(cornerWords(corner))}</legend>
    {edges.length === 0 ? <p className="gaps-note">laps, no gap</p> : null}
    {edges.map((edge) => (
      <div key={edge} onFocus={() => onReached({ edge, corner })} onBlur={() => onReached(null)}>
        <GapField
          label={`Gap ${PLACES[edge]}`}
          mm={readingOf(seen, corner, edge)}
          unit={unit}
          onChange={(mm) => onReading(edge, mm)}
        />
      </div>
    ))}
  </fieldset>
);

const PLACES: Readonly<Record<Edge, string>> = {
  left: 'at the left side',
  right: 'at the right side',
  top: 'above',
  bottom: 'below',
};

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
