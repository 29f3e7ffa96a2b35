import { useFrame, useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import type { Showing } from '../../../core/scene/shown-seat.ts';
import type { SeatScene } from '../../../core/scene/types.ts';
import type { Room } from '../../drawing/useRoom.ts';
import { CameraRig } from './CameraRig.tsx';
import type { Sight } from '../look.ts';
import type { Palette } from '../palette.ts';
import { PictureCanvas } from './PictureCanvas.tsx';
import { SceneParts } from './SceneParts.tsx';

export interface PictureProps {
  readonly scene: SeatScene;
  readonly sight: Sight;
  readonly showing: Showing;
  readonly palette: Palette;
  readonly room: Room;
  /** There is nothing to draw on, or there is no longer. */
  readonly onLost: () => void;
  /** Told of every picture that is drawn. */
  readonly onFrame: () => void;
}

/** A seat in space. A picture is made only when something that it shows has changed. */
export function SpaceSeat(props: PictureProps) {
  const { sight, room, onLost, onFrame } = props;
  return (
    // What the picture shows is told by the words round it.
    <PictureCanvas room={room} onLost={onLost}>
      <SceneParts {...props} />
      <CameraRig sight={sight} />
      <FrameWatch onLost={onLost} onFrame={onFrame} />
    </PictureCanvas>
  );
}

/** Tells of pictures that were drawn, and of the loss of the means to draw them. */
function FrameWatch({ onLost, onFrame }: Pick<PictureProps, 'onLost' | 'onFrame'>) {
  const canvas = useThree((state) => state.gl.domElement);
  // Drawn once all that is called before it has been.
  useFrame(() => queueMicrotask(onFrame));
  useEffect(() => {
    // A canvas that is taken down gives its context back and tells of it too.
    let here = true;
    const lost = (): void => {
      if (here) onLost();
    };
    canvas.addEventListener('webglcontextlost', lost);
    return () => {
      here = false;
      canvas.removeEventListener('webglcontextlost', lost);
    };
  }, [canvas, onLost]);
  return null;
}
