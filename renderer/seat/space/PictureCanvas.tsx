import { createRoot, extend, type ReconcilerRoot } from '@react-three/fiber';
import { useLayoutEffect, useRef, type ReactNode } from 'react';
import { Group, Mesh, WebGLRenderer } from 'three';
import type { Room } from '../../drawing/useRoom.ts';
import { takeCanvas } from '../picture-canvas.ts';

// What a picture is made of, and no more: the whole of three.js takes twice as long to load.
extend({ Group, Mesh });

interface PictureCanvasProps {
  /** The size of the place that it fills. */
  readonly room: Room;
  /** What is drawn. */
  readonly children: ReactNode;
  /** There is nothing to draw on. */
  readonly onLost: () => void;
}

interface Root {
  readonly drawing: ReconcilerRoot<HTMLCanvasElement>;
  readonly renderer: WebGLRenderer;
}

/** A canvas as large as its place, in which the children are drawn when one of them has changed. */
export function PictureCanvas({ room: { width, height }, children, onLost }: PictureCanvasProps) {
  const place = useRef<HTMLDivElement>(null);
  const root = useRef<Root | null>(null);

  useLayoutEffect(() => {
    const [element, renderer] = [place.current, newRenderer()];
    if (element === null) return undefined;
    if (renderer === null) {
      onLost();
      return undefined;
    }
    element.append(renderer.domElement);
    const drawing = createRoot(renderer.domElement);
    root.current = { drawing, renderer };
    return () => {
      root.current = null;
      drawing.unmount();
      renderer.domElement.remove();
    };
  }, [onLost]);

  useLayoutEffect(() => {
    if (root.current === null || width === 0 || height === 0) return;
    const { drawing, renderer } = root.current;
    drawing
      .configure({
        // Made here, given back by it.
        gl: () => renderer,
        size: { width, height, top: 0, left: 0 },
        orthographic: true,
        flat: true,
        frameloop: 'demand',
        dpr: [1, 2],
      })
      .catch(onLost);
    if (drawing.ready.status === 'fulfilled') drawing.render(children);
  });

  return <div ref={place} className="seat-canvas" aria-hidden="true" />;
}

function newRenderer(): WebGLRenderer | null {
  const canvas = takeCanvas();
  if (canvas === null) return null;
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.localClippingEnabled = true;
  return renderer;
}
