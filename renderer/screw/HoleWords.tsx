import { depthStop } from '../../core/fastening/depth-stop.ts';
import type { Fastening, ScrewPlace } from '../../core/fastening/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';

interface HoleWordsProps {
  readonly fastening: Fastening;
  readonly place: ScrewPlace;
  readonly unit: LengthUnit;
}

/** The holes for the screw, the drill, and what the screws hold. */
export function HoleWords({ fastening, place, unit }: HoleWordsProps) {
  const { holes, fit, withdrawal } = fastening;
  const length = (mm: number): string => formatLength(mm, unit);
  return (
    <section className="parts-panel" aria-label="Holes for the screw">
      <h4>Holes</h4>
      {holes === null ? (
        <p>No screw of the shop fits, so there is nothing to drill.</p>
      ) : (
        <>
          <p>
            {holes.plan}: {holes.why}
          </p>
          <dl className="readout-list">
            <Row name="Pilot bit" text={length(holes.pilotDiameter)} />
            {holes.clearanceDiameter > 0 ? (
              <Row name="Clearance bit" text={length(holes.clearanceDiameter)} />
            ) : null}
            <Row
              name="Depth stop from the tip, without a guide"
              text={length(depthStop(place, holes, fit, 0))}
            />
            <Row name="From the box's side" text={length(place.fromSide)} />
            <Row
              name={place.corner.end === 'bottom' ? "From the box's lower edge" : "From the box's upper edge"}
              text={length(place.fromEnd)}
            />
            <Row
              name="All screws hold, after the safety factor"
              text={`${Math.round(withdrawal.capacity)} N of ${Math.round(withdrawal.pull)} N`}
            />
          </dl>
        </>
      )}
    </section>
  );
}

const Row = ({ name, text }: { readonly name: string; readonly text: string }) => (
  <div>
    <dt>{name}</dt>
    <dd className="app-figure">{text}</dd>
  </div>
);
