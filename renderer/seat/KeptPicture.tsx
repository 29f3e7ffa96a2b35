import { useEffect, useLayoutEffect, useRef } from 'react';
import type { Room } from '../drawing/useRoom.ts';
import { BUILT_ROOM } from './built-picture.ts';
import { pixelsPerMm, type Sight } from './look.ts';

interface KeptPictureProps {
  readonly picture: Element;
  readonly room: Room;
  readonly sight: Sight;
  readonly onFrame: () => void;
}

/** The picture that the page was built with, as large as it would be drawn here. */
export function KeptPicture({ picture, room, sight, onFrame }: KeptPictureProps) {
  const host = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => host.current?.append(picture), [picture]);
  useEffect(onFrame, [onFrame]);
  const { width, height } = keptSize(room, sight);
  return (
    <div
      ref={host}
      className="seat-kept"
      style={{ width, height, left: (room.width - width) / 2, top: (room.height - height) / 2 }}
    />
  );
}

/** Whether the picture leaves nothing of the room empty. */
export function fills(room: Room, sight: Sight): boolean {
  const { width, height } = keptSize(room, sight);
  return width >= room.width && height >= room.height;
}

function keptSize(room: Room, sight: Sight) {
  const times = pixelsPerMm(room, sight) / pixelsPerMm(BUILT_ROOM, sight);
  return { width: BUILT_ROOM.width * times, height: BUILT_ROOM.height * times };
}
