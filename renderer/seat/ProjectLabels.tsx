import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, type RefObject } from 'react';
import { Vector3, type Camera } from 'three';
import type { Vec3 } from '../../core/jigs/types.ts';
import { clearOf, placeLabel, type Spot, type Taken } from './place-label.ts';
import type { SeatLabel } from './seat-labels.ts';

/** Pixels from a point to its label. A dimension's stands off, so that it hides nothing, with a line to it. */
const GAP = { dimension: 26, left: 8, tool: 6 } as const;

/** Pixels that the strokes at the ends of a dimension stand out. */
const STROKE = 10;

interface ProjectLabelsProps {
  readonly labels: readonly SeatLabel[];
  readonly layer: RefObject<HTMLDivElement | null>;
}

/** Puts the labels of the page where their points are in the picture, whenever one is drawn. */
export function ProjectLabels({ labels, layer }: ProjectLabelsProps) {
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => invalidate(), [labels, invalidate]);
  useFrame(({ camera, size }) => {
    const taken: Taken[] = [
      ...fixedWords(layer.current),
      ...labels.flatMap(({ spares }) =>
        spares === undefined ? [] : [around(spares.map((end) => onScreen(end, camera, size)))],
      ),
    ];
    for (const label of labels) {
      const element = layer.current?.querySelector<HTMLElement>(`[data-label="${label.id}"]`);
      if (element === null || element === undefined) continue;
      const at = onScreen(label.at, camera, size);
      const box = { width: element.offsetWidth, height: element.offsetHeight };
      const wanted = placeLabel(at, onScreen(label.away, camera, size), box, size, GAP[label.kind]);
      const spot = clearOf(wanted, box, taken, size);
      taken.push({ ...spot, ...box });
      element.style.transform = `translate(${Math.round(spot.x)}px, ${Math.round(spot.y)}px)`;
      element.style.visibility = 'visible';
      const leader = layer.current?.querySelector(`[data-leader="${label.id}"]`);
      leader?.setAttribute('d', `M${at.x} ${at.y}L${spot.x + box.width / 2} ${spot.y + box.height / 2}`);
    }
  });
  return null;
}

/** Room round points, for their strokes. */
function around(points: readonly Spot[]): Taken {
  const [x, y] = [Math.min(...points.map((one) => one.x)), Math.min(...points.map((one) => one.y))];
  const [right, bottom] = [Math.max(...points.map((one) => one.x)), Math.max(...points.map((one) => one.y))];
  return { x: x - STROKE, y: y - STROKE, width: right - x + 2 * STROKE, height: bottom - y + 2 * STROKE };
}

/** What always stands in the picture beside the labels. */
const fixedWords = (layer: HTMLElement | null): Taken[] =>
  [...(layer?.closest('.seat-frame')?.querySelectorAll<HTMLElement>('.seat-fixed') ?? [])].map((element) => ({
    x: element.offsetLeft,
    y: element.offsetTop,
    width: element.offsetWidth,
    height: element.offsetHeight,
  }));

function onScreen(point: Vec3, camera: Camera, size: { readonly width: number; readonly height: number }) {
  const seen = new Vector3(point.x, point.y, point.z).project(camera);
  return { x: ((seen.x + 1) / 2) * size.width, y: ((1 - seen.y) / 2) * size.height };
}
