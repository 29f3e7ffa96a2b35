import { useMemo } from 'react';
import { listCabinets } from '../../core/elevation/list-cabinets.ts';
import { cabinetElevation } from '../../core/elevation/cabinet-elevation.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { DraftRow } from '../../core/project/draft.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { DraftFinding } from '../../core/session/types.ts';
import type { Selection } from '../store/types.ts';
import './cabinet.css';
import { CabinetList } from './CabinetList.tsx';
import { ElevationDrawing } from './ElevationDrawing.tsx';
import { UndrawnRows } from './UndrawnRows.tsx';

export interface CabinetViewProps {
  /** By row id; rows with an error have none. */
  readonly fits: Readonly<Record<string, DrawerFit>>;
  readonly rows: readonly DraftRow[];
  readonly findings: readonly DraftFinding[];
  readonly construction: ShopStandard['construction'];
  readonly selection: Selection;
  readonly unit: LengthUnit;
  readonly onSelect: (rowId: string) => void;
}

/** The cabinets of the order from the front, one at a time: the one whose drawer is picked, or the first. */
export function CabinetView(props: CabinetViewProps) {
  const { fits, rows, findings, construction, selection, unit, onSelect } = props;
  const cabinets = useMemo(() => listCabinets(rows, findings), [rows, findings]);
  const picked = selection.rowId;
  const shown = cabinets.find(({ rowIds }) => picked !== null && rowIds.includes(picked)) ?? cabinets[0];
  const elevation = useMemo(() => {
    const drawn = (shown?.rowIds ?? []).flatMap((rowId) => {
      const fit = fits[rowId];
      return fit === undefined ? [] : [{ rowId, fit }];
    });
    return drawn.length === 0 ? null : cabinetElevation(drawn, { construction, findings });
  }, [shown, fits, construction, findings]);

  if (shown === undefined) {
    return (
      <p className="cabinet-empty">There is no cabinet yet. Add a drawer to the order to see it here.</p>
    );
  }
  const undrawn = rows.filter(({ id }) => shown.rowIds.includes(id) && fits[id] === undefined);
  return (
    <div className="cabinet-room">
      <div className="cabinet">
        {cabinets.length > 1 ? (
          <CabinetList cabinets={cabinets} shown={shown.key} onSelect={onSelect} />
        ) : null}
        <div className="cabinet-main">
          {elevation === null ? (
            <p className="cabinet-empty">No drawer of this cabinet can be drawn yet.</p>
          ) : (
            <ElevationDrawing
              key={elevation.key}
              elevation={elevation}
              fits={fits}
              picked={picked}
              unit={unit}
              onSelect={onSelect}
            />
          )}
          <UndrawnRows rows={undrawn} picked={picked} onSelect={onSelect} />
        </div>
      </div>
    </div>
  );
}
