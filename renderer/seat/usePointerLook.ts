import { useEffect, useRef, type PointerEvent, type RefObject } from 'react';
import { moveBy, pixelsPerMm, turnBy, type Sight } from './look.ts';
import type { SeatAction } from './seat-state.ts';

/** Degrees for a pixel that is dragged. */
const TURN = 0.4;

interface PointerLook {
  readonly host: RefObject<HTMLDivElement | null>;
  readonly sight: Sight;
  readonly dispatch: (action: SeatAction) => void;
}

/** Drag to turn, drag with the right button or Shift to move, wheel or two fingers to enlarge. */
export function usePointerLook({ host, sight, dispatch }: PointerLook) {
  const fingers = useRef(new Map<number, { readonly x: number; readonly y: number }>());
  const latest = useRef(sight);
  useEffect(() => {
    latest.current = sight;
  });

  useEffect(() => {
    const element = host.current;
    if (element === null) return undefined;
    const turn = (event: WheelEvent): void => {
      event.preventDefault();
      dispatch({ do: 'enlarge', by: Math.exp(-event.deltaY / 400) });
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => element.removeEventListener('wheel', turn);
  }, [host, dispatch]);

  const move = (dx: number, dy: number, element: HTMLElement): void => {
    const size = { width: element.clientWidth, height: element.clientHeight };
    const scale = pixelsPerMm(size, latest.current);
    dispatch(moveBy(-dx / scale, dy / scale));
  };

  return {
    onPointerDown(event: PointerEvent<HTMLDivElement>) {
      fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
      event.currentTarget.setPointerCapture(event.pointerId);
    },
    onPointerMove(event: PointerEvent<HTMLDivElement>) {
      const before = fingers.current.get(event.pointerId);
      if (before === undefined) return;
      const here = { x: event.clientX, y: event.clientY };
      const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
      fingers.current.set(event.pointerId, here);
      const [dx, dy] = [here.x - before.x, here.y - before.y];
      if (other !== undefined) {
        const was = Math.hypot(before.x - other.x, before.y - other.y);
        const is = Math.hypot(here.x - other.x, here.y - other.y);
        if (was > 0) dispatch({ do: 'enlarge', by: is / was });
        move(dx / 2, dy / 2, event.currentTarget);
      } else if (event.shiftKey || (event.buttons & 6) !== 0) {
        move(dx, dy, event.currentTarget);
      } else {
        dispatch(turnBy(latest.current, -dx * TURN, dy * TURN));
      }
    },
    onPointerUp(event: PointerEvent<HTMLDivElement>) {
      fingers.current.delete(event.pointerId);
    },
    onPointerCancel(event: PointerEvent<HTMLDivElement>) {
      fingers.current.delete(event.pointerId);
    },
    onContextMenu(event: { preventDefault(): void }) {
      event.preventDefault();
    },
  };
}
