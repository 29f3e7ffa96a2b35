import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, type RefObject } from 'react';
import type { SeatScene, Step } from '../../core/scene/types.ts';
import { CameraRig } from './CameraRig.tsx';
import type { Palette } from './palette.ts';
import { PictureCanvas } from './PictureCanvas.tsx';
import { ProjectLabels } from './ProjectLabels.tsx';
import type { SeatLabel } from './seat-labels.ts';
import type { Sight } from './look.ts';
import { SceneParts } from './SceneParts.tsx';

export interface SeatPictureProps {
  readonly scene: SeatScene;
  readonly sight: Sight;
  readonly step: Step | null;
  /** How much of the step has passed, from 0 to 1. */
  readonly share: number;
  readonly apart: number;
  /** Where it is cut, mm along the section's axis; null when whole. */
  readonly cutAt: number | null;
  readonly zones: boolean;
  readonly palette: Palette;
  readonly labels: readonly SeatLabel[];
  readonly layer: RefObject<HTMLDivElement | null>;
  readonly onLost: () => void;
  readonly onFrame?: (() => void) | undefined;
}

/** The drawing itself. A picture is made only when something that it shows has changed. */
export function SeatPicture(props: SeatPictureProps) {
  const { sight, labels, layer, onLost, onFrame } = props;
  return (
    // What the picture shows is told by the words round it.
    <PictureCanvas onLost={onLost}>
      <SceneParts {...props} />
      <CameraRig sight={sight} />
      <ProjectLabels labels={labels} layer={layer} />
      <FrameWatch onLost={onLost} onFrame={onFrame} />
    </PictureCanvas>
  );
}

/** Tells of pictures that were drawn, and of the loss of the means to draw them. */
function FrameWatch({ onLost, onFrame }: Pick<SeatPictureProps, 'onLost' | 'onFrame'>) {
  const canvas = useThree((state) => state.gl.domElement);
  // Drawn once all that is called before it has been.
  useFrame(() => {
    if (onFrame !== undefined) queueMicrotask(onFrame);
  });
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
