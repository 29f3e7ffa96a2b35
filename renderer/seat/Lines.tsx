import { useEffect, useMemo } from 'react';
import type { Plane } from 'three';
import { LineMaterial } from 'three/examples/jsm/lines/LineMaterial.js';
import { LineSegments2 } from 'three/examples/jsm/lines/LineSegments2.js';
import type { LineSegmentsGeometry } from 'three/examples/jsm/lines/LineSegmentsGeometry.js';

interface LinesProps {
  readonly geometry: LineSegmentsGeometry;
  readonly color: string;
  /** Pixels. */
  readonly width: number;
  /** Drawn over everything that stands before it. */
  readonly over?: boolean;
  /** Strokes of so many mm, as hidden edges are drawn; 0 draws the line whole. */
  readonly dash?: number;
  readonly clip?: readonly Plane[];
}

const WHOLE: readonly Plane[] = [];

/** Lines of a width in pixels. */
export function Lines({ geometry, color, width, over = false, dash = 0, clip = WHOLE }: LinesProps) {
  const material = useMemo(
    () =>
      new LineMaterial({
        color,
        linewidth: width,
        depthTest: !over,
        depthWrite: !over,
        transparent: over,
        dashed: dash > 0,
        dashSize: dash,
        gapSize: dash * 0.7,
        clippingPlanes: [...clip],
      }),
    [color, width, over, dash, clip],
  );
  useEffect(() => () => material.dispose(), [material]);
  const object = useMemo(() => new LineSegments2(), []);
  object.geometry = geometry;
  object.material = material;
  if (dash > 0) object.computeLineDistances();
  object.renderOrder = over ? 20 : 1;
  return <primitive object={object} />;
}
