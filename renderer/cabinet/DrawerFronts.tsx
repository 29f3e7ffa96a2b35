import { useRef, type KeyboardEvent } from 'react';
import type { Elevation, ElevationDrawer } from '../../core/elevation/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Projection } from '../drawing/projection.ts';
import { DrawerFront } from './DrawerFront.tsx';
import { nextDrawer } from './next-drawer.ts';

interface DrawerFrontsProps {
  readonly elevation: Elevation;
  readonly fits: Readonly<Record<string, DrawerFit>>;
  readonly picked: string | null;
  readonly unit: LengthUnit;
  readonly projection: Projection;
  readonly onSelect: (rowId: string) => void;
}

/** The fronts as a list to pick one from: the tab key reaches the picked one, arrows go to the next. */
export function DrawerFronts(props: DrawerFrontsProps) {
  const { elevation, fits, picked, unit, projection, onSelect } = props;
  const list = useRef<SVGGElement>(null);
  const { drawers } = elevation;
  const reached = drawers.find(({ rowId }) => rowId === picked) ?? drawers[0];

  const pick = (drawer: ElevationDrawer): void => {
    onSelect(drawer.rowId);
    const index = drawers.indexOf(drawer);
    list.current?.querySelectorAll<SVGGElement>('[role="option"]')[index]?.focus();
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.shiftKey || event.ctrlKey || event.altKey || event.metaKey || reached === undefined) return;
    const next = nextDrawer(event.key, reached, drawers);
    if (next === null) return;
    event.preventDefault();
    pick(next);
  };
  return (
    <g ref={list} role="listbox" aria-label={`Drawers of ${elevation.name}`} onKeyDown={onKeyDown}>
      {drawers.map((drawer) => (
        <DrawerFront
          key={drawer.rowId}
          drawer={drawer}
          fit={fits[drawer.rowId]}
          isPicked={drawer.rowId === picked}
          isReached={drawer === reached}
          unit={unit}
          projection={projection}
          onPick={() => pick(drawer)}
        />
      ))}
    </g>
  );
}
