import { useMemo, useState, type KeyboardEvent } from 'react';
import type { LengthUnit } from '../../core/order/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { partSizes } from '../../core/parts/part-sizes.ts';
import { snapPoints } from '../../core/parts/snap-points.ts';
import type { PartDetail } from '../../core/session/types.ts';
import { DrawingSurface } from '../drawing/DrawingSurface.tsx';
import { drawingKey } from '../drawing/keys.ts';
import { useDrawing } from '../drawing/useDrawing.ts';
import { ZoomButtons } from '../drawing/ZoomButtons.tsx';
import { HoleTable } from './HoleTable.tsx';
import { MeasureMarks } from './MeasureMarks.tsx';
import { MeasurePanel } from './MeasurePanel.tsx';
import { PartLegend } from './PartLegend.tsx';
import { PartLines } from './PartLines.tsx';
import { PartSizesDrawn } from './PartSizesDrawn.tsx';
import { useMeasure } from './useMeasure.ts';

/** Room in rem about the part for its overall dimensions. */
const MARGINS = { left: 4, right: 1.5, top: 1.5, bottom: 4 };

interface PartDrawingProps {
  readonly detail: PartDetail;
  readonly machine: MachineProfile;
  readonly unit: LengthUnit;
}

/** One part to scale, with its lines told apart, its sizes, and two points to measure between. */
export function PartDrawing({ detail, machine, unit }: PartDrawingProps) {
  const { part, followed } = detail;
  const [showPath, setShowPath] = useState(false);
  const [hole, setHole] = useState<number | null>(null);
  const sizes = useMemo(() => partSizes(part), [part]);
  const points = useMemo(() => snapPoints(part.features), [part]);
  const { origin, width, height } = sizes;
  const drawing = useDrawing({ ...origin, w: width, h: height, yUp: true }, MARGINS);
  const measure = useMeasure(points, drawing);
  const { projection, room } = drawing;

  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (measure.key(event.key) || drawingKey(event.key, drawing)) event.preventDefault();
  };
  return (
    <>
      <div className="parts-bar">
        <h3>{part.title}</h3>
        <button type="button" aria-pressed={showPath} onClick={() => setShowPath(!showPath)}>
          Path of the cut
        </button>
        <ZoomButtons drawing={drawing} />
      </div>
      <div className="parts-drawing">
        <DrawingSurface
          drawing={drawing}
          focusable
          label={`${part.title} to scale. N and P go through its points, Enter picks one, Escape begins again; + and - change the size, 0 shows all, arrows move.`}
          onKeyDown={onKeyDown}
          onClick={measure.pickNear}
          onHover={measure.hover}
        >
          {projection === null || room === null ? null : (
            <>
              <PartLines
                features={part.features}
                followed={showPath ? followed : null}
                transform={projection.transform}
              />
              <PartSizesDrawn sizes={sizes} hole={hole} projection={projection} rem={room.rem} unit={unit} />
              <MeasureMarks measure={measure} projection={projection} rem={room.rem} unit={unit} />
            </>
          )}
        </DrawingSurface>
      </div>
      <div className="parts-below">
        <MeasurePanel measure={measure} origin={origin} unit={unit} />
        <PartLegend detail={detail} machine={machine} showPath={showPath} unit={unit} />
        <HoleTable sizes={sizes} hole={hole} unit={unit} onPick={setHole} />
      </div>
    </>
  );
}
