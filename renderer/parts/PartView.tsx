import type { LengthUnit } from '../../core/order/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { PartDetail, PartSummary } from '../../core/session/types.ts';
import { PartDrawing } from './PartDrawing.tsx';
import { PartList } from './PartList.tsx';
import './parts.css';

export interface PartViewProps {
  readonly parts: readonly PartSummary[];
  /** The part that is shown; null shows none. */
  readonly partId: string | null;
  /** The contours of that part; null until they have come, or those of another part. */
  readonly detail: PartDetail | null;
  readonly machine: MachineProfile;
  readonly unit: LengthUnit;
  readonly onSelect: (partId: string) => void;
}

/** The flat parts of the jigs, one at a time to scale. */
export function PartView({ parts, partId, detail, machine, unit, onSelect }: PartViewProps) {
  if (parts.length === 0) {
    return (
      <p className="parts-empty">There are no parts yet: they come when a drawer of the order has its jig.</p>
    );
  }
  const shown = parts.find(({ id }) => id === partId);
  return (
    <div className="parts-room">
      <div className="parts">
        <PartList parts={parts} partId={partId} unit={unit} onSelect={onSelect} />
        <div className="parts-main">
          {detail !== null && shown !== undefined && detail.part.id === shown.id ? (
            <PartDrawing key={shown.id} detail={detail} machine={machine} unit={unit} />
          ) : (
            <p className="parts-empty" role="status">
              {shown === undefined ? 'Pick a part from the list.' : `Drawing ${shown.title} …`}
            </p>
          )}
        </div>
      </div>
    </div>
  );
}
