import type { ElevationDrawer } from '../../core/elevation/types.ts';
import type { DrawerFit, Placed } from '../../core/fit/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import type { Projection } from '../drawing/projection.ts';
import { STATE_WORDS } from './state-words.ts';

interface DrawerFrontProps {
  readonly drawer: ElevationDrawer;
  readonly fit: DrawerFit | undefined;
  readonly isPicked: boolean;
  /** The tab key comes to it. */
  readonly isReached: boolean;
  readonly unit: LengthUnit;
  readonly projection: Projection;
  readonly onPick: () => void;
}

/** One front with the box behind it. */
export function DrawerFront(props: DrawerFrontProps) {
  const { drawer, fit, isPicked, isReached, unit, projection, onPick } = props;
  const { front, box, pieces, state, name, qty } = drawer;
  const size = `${formatLength(front.w, unit)} × ${formatLength(front.h, unit)}`;
  const several = qty > 1 ? `, ${qty} alike` : '';
  const style = fit === undefined ? '' : `, ${fit.drawer.style}`;
  return (
    <g
      role="option"
      className={`cabinet-front cabinet-front-${state}`}
      aria-selected={isPicked}
      aria-label={`Drawer ${name}${style}, front ${size}${several}, ${STATE_WORDS[state].word}`}
      tabIndex={isReached ? 0 : -1}
      onClick={onPick}
    >
      <g aria-hidden="true" transform={projection.transform}>
        <Rectangle className="cabinet-front-face" place={front} />
        {pieces.map((piece) => (
          <Rectangle key={`${piece.x} ${piece.y}`} className="cabinet-front-piece" place={piece} />
        ))}
        <Rectangle className="cabinet-box" place={box} />
        <Rectangle className="cabinet-front-outline" place={front} />
      </g>
    </g>
  );
}

function Rectangle({ className, place }: { readonly className: string; readonly place: Placed }) {
  const { x, y, w, h } = place;
  return <rect className={className} x={x} y={y} width={Math.max(w, 0)} height={Math.max(h, 0)} />;
}
