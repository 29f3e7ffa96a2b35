import { useEffect, useRef, type KeyboardEvent, type PointerEvent, type ReactNode } from 'react';
import type { Point } from '../../core/geometry/types.ts';
import './drawing.css';
import type { Drawing } from './useDrawing.ts';

/** Pixels that a hand trembles in a click. */
const CLICK = 4;

interface DrawingSurfaceProps {
  readonly drawing: Drawing;
  /** What is drawn, and by which keys it is worked. */
  readonly label: string;
  /** In reach of the tab key; not where the drawing holds its own controls. */
  readonly focusable: boolean;
  readonly onKeyDown: (event: KeyboardEvent<HTMLDivElement>) => void;
  /** A click that moved nothing, in pixels of the surface. */
  readonly onClick?: (pixel: Point) => void;
  readonly onHover?: (pixel: Point | null) => void;
  readonly children: ReactNode;
}

/** The room of a drawing: wheel to enlarge, drag to move. */
export function DrawingSurface(props: DrawingSurfaceProps) {
  const { drawing, label, focusable, onKeyDown, onClick, onHover, children } = props;
  const pressed = useRef<{ at: Point; moved: boolean } | null>(null);
  useWheel(drawing);

  const down = (event: PointerEvent<HTMLDivElement>): void => {
    if (event.button === 0) pressed.current = { at: pixelOf(event), moved: false };
  };
  const move = (event: PointerEvent<HTMLDivElement>): void => {
    const pixel = pixelOf(event);
    const start = pressed.current;
    if (start === null) {
      onHover?.(pixel);
      return;
    }
    const [dx, dy] = [pixel.x - start.at.x, pixel.y - start.at.y];
    if (!start.moved && Math.hypot(dx, dy) < CLICK) return;
    if (!start.moved) event.currentTarget.setPointerCapture(event.pointerId);
    pressed.current = { at: pixel, moved: true };
    drawing.panBy(dx, dy);
  };
  const up = (event: PointerEvent<HTMLDivElement>): void => {
    if (pressed.current?.moved === false) onClick?.(pixelOf(event));
    pressed.current = null;
  };
  return (
    <div
      ref={drawing.ref}
      className="drawing-surface"
      role="group"
      aria-label={label}
      {...(focusable ? { tabIndex: 0 } : {})}
      onKeyDown={onKeyDown}
      onPointerDown={down}
      onPointerMove={move}
      onPointerUp={up}
      onPointerCancel={() => {
        pressed.current = null;
      }}
      onPointerLeave={() => onHover?.(null)}
    >
      {drawing.room === null ? null : (
        <svg
          className="drawing-sheet"
          width={drawing.room.width}
          height={drawing.room.height}
          viewBox={`0 0 ${drawing.room.width} ${drawing.room.height}`}
        >
          {children}
        </svg>
      )}
    </div>
  );
}

function pixelOf(event: PointerEvent<HTMLDivElement>): Point {
  const { left, top } = event.currentTarget.getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

/** The wheel enlarges about the pointer; the page must not scroll meanwhile. */
function useWheel(drawing: Drawing): void {
  const latest = useRef(drawing);
  useEffect(() => {
    latest.current = drawing;
  });
  const { ref } = drawing;
  useEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const turn = (event: WheelEvent): void => {
      event.preventDefault();
      const { left, top } = element.getBoundingClientRect();
      latest.current.zoomBy(Math.exp(-event.deltaY / 400), {
        x: event.clientX - left,
        y: event.clientY - top,
      });
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [ref]);
}
