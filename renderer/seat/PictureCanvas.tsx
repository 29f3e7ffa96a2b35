import { createRoot, extend, type ReconcilerRoot } from '@react-three/fiber';
import { useLayoutEffect, useRef, useState, type ReactNode } from 'react';
import { Group, Mesh, type WebGLRenderer } from 'three';
import { takeRenderer } from './picture-renderer.ts';

// What a picture is made of, and no more: the whole of three.js takes twice as long to load.
extend({ Group, Mesh });

interface PictureCanvasProps {
  /** What is drawn. */
  readonly children: ReactNode;
  /** There is nothing to draw on. */
  readonly onLost: () => void;
}

interface Root {
  readonly drawing: ReconcilerRoot<HTMLCanvasElement>;
  readonly renderer: WebGLRenderer;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A canvas as large as its place, in which the children are drawn when one of them has changed. */
export function PictureCanvas({ children, onLost }: PictureCanvasProps) {
  const place = useRef<HTMLDivElement>(null);
  const root = useRef<Root | null>(null);
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });

  useLayoutEffect(() => {
    const [element, renderer] = [place.current, takeRenderer()];
    if (element === null) return undefined;
    if (renderer === null) {
      onLost();
      return undefined;
    }
    element.append(renderer.domElement);
    const drawing = createRoot(renderer.domElement);
    root.current = { drawing, renderer };
    const measure = (): void => {
      const { width, height } = element.getBoundingClientRect();
      setSize((before) => (before.width === width && before.height === height ? before : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => {
      observer.disconnect();
      root.current = null;
      drawing.unmount();
      renderer.domElement.remove();
    };
  }, [onLost]);

  useLayoutEffect(() => {
    if (root.current === null || size.width === 0 || size.height === 0) return;
    const { drawing, renderer } = root.current;
    drawing
      .configure({
        // Made here, given back by it.
        gl: () => renderer,
        size: { ...size, top: 0, left: 0 },
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
