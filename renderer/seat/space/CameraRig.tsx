import { useThree } from '@react-three/fiber';
import { useLayoutEffect } from 'react';
import { OrthographicCamera } from 'three';
import { directionsOf } from '../../../core/scene/directions.ts';
import { pixelsPerMm, type Sight } from '../look.ts';

/** mm. From what is looked at to the eye: parallel rays, so it only has to be past everything. */
const DISTANCE = 3000;

/** Puts the eye where the look says, and asks for one picture. */
export function CameraRig({ sight }: { readonly sight: Sight }) {
  const camera = useThree((state) => state.camera);
  const size = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  useLayoutEffect(() => {
    if (!(camera instanceof OrthographicCamera)) return;
    const { up, viewer } = directionsOf(sight);
    const { x, y, z } = sight.focus;
    camera.up.set(up.x, up.y, up.z);
    camera.position.set(x + viewer.x * DISTANCE, y + viewer.y * DISTANCE, z + viewer.z * DISTANCE);
    camera.lookAt(x, y, z);
    camera.near = 1;
    camera.far = 2 * DISTANCE;
    camera.zoom = pixelsPerMm(size, sight);
    camera.updateProjectionMatrix();
    camera.updateMatrixWorld();
    invalidate();
  }, [camera, size, invalidate, sight]);
  return null;
}
