import { directionsOf } from '../../core/scene/directions.ts';
import type { Sight } from './look.ts';

/** Less than this of the direction in the plane of the picture: it points at the viewer, or away. */
const END_ON = 0.3;

/** Where the cabinet's left is in the picture as it is turned; always in view. */
export function LeftCompass({ sight }: { readonly sight: Sight }) {
  const { right, up, viewer } = directionsOf(sight);
  // The cabinet's left is along +x.
  const [x, y] = [right.x, up.x];
  const endOn = Math.hypot(x, y) < END_ON;
  const words = endOn ? (viewer.x > 0 ? 'is towards you' : 'is away from you') : pictureWords(x, y);
  const angle = (Math.atan2(-y, x) * 180) / Math.PI;
  return (
    <p className="seat-fixed seat-compass">
      <svg viewBox="-20 -20 40 40" aria-hidden="true">
        {endOn ? (
          <>
            <circle r="13" />
            {viewer.x > 0 ? <circle r="3" className="seat-compass-dot" /> : <path d="M-9 -9 9 9M-9 9 9 -9" />}
          </>
        ) : (
          <path d="M-16 0H14M4 -9 15 0 4 9" transform={`rotate(${angle})`} />
        )}
      </svg>
      <span>
        <b>Cabinet left</b> {words}
      </span>
    </p>
  );
}

function pictureWords(x: number, y: number): string {
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? 'is on the right' : 'is on the left';
  return y > 0 ? 'is at the top' : 'is at the bottom';
}
