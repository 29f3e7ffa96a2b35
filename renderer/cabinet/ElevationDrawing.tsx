import { useState, type KeyboardEvent } from 'react';
import type { Elevation } from '../../core/elevation/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { DrawingSurface } from '../drawing/DrawingSurface.tsx';
import { drawingKey } from '../drawing/keys.ts';
import { useDrawing } from '../drawing/useDrawing.ts';
import { ZoomButtons } from '../drawing/ZoomButtons.tsx';
import { CabinetFrame } from './CabinetFrame.tsx';
import { CabinetWords } from './CabinetWords.tsx';
import { DrawerFronts } from './DrawerFronts.tsx';
import { ElevationLegend } from './ElevationLegend.tsx';
import { GapList } from './GapList.tsx';

/** Room in rem about the cabinet for the figures of its reveals. */
const MARGINS = { left: 5.5, right: 5.5, top: 2.75, bottom: 3.75 };

interface ElevationDrawingProps {
  readonly elevation: Elevation;
  readonly fits: Readonly<Record<string, DrawerFit>>;
  readonly picked: string | null;
  readonly unit: LengthUnit;
  readonly onSelect: (rowId: string) => void;
}

/** One cabinet to scale, its drawers to be picked. */
export function ElevationDrawing({ elevation, fits, picked, unit, onSelect }: ElevationDrawingProps) {
  const [showGaps, setShowGaps] = useState(true);
  const drawing = useDrawing({ ...elevation.outside, yUp: false }, MARGINS);
  const { projection, room } = drawing;

  const onKeyDown = (event: KeyboardEvent): void => {
    const isArrow = event.key.startsWith('Arrow');
    if (event.ctrlKey || event.metaKey || event.altKey || (isArrow && !event.shiftKey)) return;
    if (drawingKey(event.key, drawing)) event.preventDefault();
  };
  return (
    <>
      <div className="cabinet-bar">
        <h3>{elevation.name}</h3>
        <label>
          <input type="checkbox" checked={showGaps} onChange={(event) => setShowGaps(event.target.checked)} />{' '}
          Gaps
        </label>
        <ZoomButtons drawing={drawing} />
      </div>
      <div className="cabinet-drawing">
        <DrawingSurface
          drawing={drawing}
          focusable={false}
          label={`${elevation.name} from the front. Arrows pick a drawer; + and - change the size, 0 shows all, Shift and an arrow moves.`}
          onKeyDown={onKeyDown}
        >
          {projection === null || room === null ? null : (
            <>
              <CabinetFrame elevation={elevation} projection={projection} room={room} />
              <DrawerFronts
                elevation={elevation}
                fits={fits}
                picked={picked}
                unit={unit}
                projection={projection}
                onSelect={onSelect}
              />
              <CabinetWords
                elevation={elevation}
                picked={picked}
                unit={unit}
                showGaps={showGaps}
                projection={projection}
                rem={room.rem}
              />
            </>
          )}
        </DrawingSurface>
      </div>
      <ElevationLegend elevation={elevation} />
      <GapList elevation={elevation} unit={unit} />
    </>
  );
}
