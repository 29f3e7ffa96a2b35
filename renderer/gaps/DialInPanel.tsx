import { useMemo, useState } from 'react';
import type { AdjustmentBudget } from '../../core/fit/budget/types.ts';
import { dialIn } from '../../core/fit/dial-in/dial-in.ts';
import { cornerGaps, frontPicture } from '../../core/gap-view/front-picture.ts';
import { withReading } from '../../core/gap-view/with-reading.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { CornerFields, type ReadPlace } from './CornerFields.tsx';
import { type DialInNotes, NO_NOTES } from './dial-in-notes.ts';
import { DialInAnswer } from './DialInAnswer.tsx';
import { FrontPicture } from './FrontPicture.tsx';

interface DialInPanelProps {
  readonly budget: AdjustmentBudget;
  readonly standard: ShopStandard;
  readonly unit: LengthUnit;
  readonly notes: DialInNotes;
  readonly onNotes: (notes: DialInNotes) => void;
}

const STOOD = [
  { value: 'at 0', label: 'at 0, untouched' },
  { value: 'as started', label: 'at the start settings above' },
] as const;

/** From gaps that are read at the corners of a closed drawer to what to turn. */
export function DialInPanel({ budget, standard, unit, notes, onNotes }: DialInPanelProps) {
  const { fit, start } = budget;
  const { seen, stood } = notes;
  const [reached, setReached] = useState<ReadPlace | null>(null);
  // Fields begin anew with the readings, so that no refused text stays in them.
  const [cleared, setCleared] = useState(0);
  const picture = useMemo(() => frontPicture(fit), [fit]);
  const answer = useMemo(
    () =>
      dialIn(
        seen,
        { ...fit, unit },
        standard,
        stood === 'at 0' ? undefined : { ...start, depth: 0, tilt: 0 },
      ),
    [seen, stood, fit, start, standard, unit],
  );
  const corners = cornerGaps(picture);
  const fields = (corner: keyof typeof corners) => (
    <CornerFields
      key={`${corner} ${cleared}`}
      corner={corner}
      edges={corners[corner]}
      seen={seen}
      unit={unit}
      onReading={(edge, mm) => onNotes({ ...notes, seen: withReading(seen, corner, edge, mm) })}
      onReached={setReached}
    />
  );
  return (
    <section className="gaps-panel" aria-labelledby="gaps-dial-in">
      <h3 id="gaps-dial-in">Dial it in</h3>
      {picture.gaps.length === 0 ? (
        <p>
          The front laps all round, so it has no gap of its own to read; the gap to the front below it is read
          there.
        </p>
      ) : (
        <>
          <p>
            Close the drawer, face it, and write the gaps that you read near its corners: 3/32, 2.5 mm, or a
            sum such as 1/16 + 1/32. Leave out what you did not read.
          </p>
          <div className="gaps-dial">
            <div
              className="gaps-corners"
              role="group"
              aria-label="Gaps that were read, seen by someone facing it"
            >
              {/* Above the fields, so that a reason below one of them does not move it. */}
              <div className="gaps-stood">
                <ChoiceField
                  label="The adjusters stood"
                  value={stood}
                  choices={STOOD}
                  onChange={(value) => onNotes({ ...notes, stood: value })}
                />
                <button
                  type="button"
                  onClick={() => {
                    setCleared(cleared + 1);
                    onNotes(NO_NOTES);
                  }}
                >
                  Clear the readings
                </button>
              </div>
              {fields('topLeft')}
              {fields('topRight')}
              <FrontPicture picture={picture} reached={reached} />
              {fields('bottomLeft')}
              {fields('bottomRight')}
            </div>
            <DialInAnswer fit={fit} seen={seen} answer={answer} unit={unit} />
          </div>
        </>
      )}
    </section>
  );
}
