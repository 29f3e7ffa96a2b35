import type { Elevation } from '../../core/elevation/types.ts';
import type { Projection } from '../drawing/projection.ts';
import type { Room } from '../drawing/useRoom.ts';

interface CabinetFrameProps {
  readonly elevation: Elevation;
  readonly projection: Projection;
  readonly room: Room;
}

/** Members and openings, and which side is the cabinet's left. */
export function CabinetFrame({ elevation, projection, room }: CabinetFrameProps) {
  const { outside, members, drawers } = elevation;
  const left = projection.toScreen({ x: outside.x, y: outside.y + outside.h });
  const right = projection.toScreen({ x: outside.x + outside.w, y: outside.y + outside.h });
  const isNarrow = right.x - left.x < 15 * room.rem;
  const y = Math.min(left.y + 3 * room.rem, room.height - 0.9 * room.rem);
  return (
    <g aria-hidden="true">
      <g transform={projection.transform}>
        {drawers.map(({ rowId, opening: { x, y, w, h } }) => (
          <rect key={rowId} className="cabinet-opening" x={x} y={y} width={w} height={h} />
        ))}
        {members.map(({ name, x, y, w, h }) => (
          <rect key={`${name} ${x} ${y}`} className="cabinet-member" x={x} y={y} width={w} height={h} />
        ))}
      </g>
      <text className="drawing-words" x={Math.max(left.x, 0.5 * room.rem)} y={y}>
        {isNarrow ? '← left' : '← cabinet left'}
      </text>
      <text
        className="drawing-words"
        x={Math.min(right.x, room.width - 0.5 * room.rem)}
        y={y}
        textAnchor="end"
      >
        {isNarrow ? 'right →' : 'cabinet right →'}
      </text>
    </g>
  );
}
