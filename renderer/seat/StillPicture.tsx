import { FlatSeat, type FlatSeatProps } from './FlatSeat.tsx';
import { fills, KeptPicture } from './KeptPicture.tsx';
import { useKeptPicture } from './useKeptPicture.ts';

interface StillPictureProps extends FlatSeatProps {
  /** Nobody has looked at it in another way yet. */
  readonly isUntouched: boolean;
}

/** A seat without depth: the picture that the page was built with where that is the same, or drawn flat. */
export function StillPicture({ isUntouched, ...flat }: StillPictureProps) {
  const { scene, palette, room, sight, onFrame } = flat;
  const kept = useKeptPicture(scene, palette, isUntouched);
  return kept !== null && fills(room, sight) ? (
    <KeptPicture picture={kept} room={room} sight={sight} onFrame={onFrame} />
  ) : (
    <FlatSeat {...flat} />
  );
}
