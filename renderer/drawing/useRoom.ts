import { useLayoutEffect, useRef, useState, type RefObject } from 'react';

/** The size of an element in CSS pixels, and the pixels of one rem. */
export interface Room {
  readonly width: number;
  readonly height: number;
  readonly rem: number;
}

/** Follows the size of an element; null until it has been measured. */
export function useRoom(): { readonly ref: RefObject<HTMLDivElement | null>; readonly room: Room | null } {
  const ref = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState<Room | null>(null);
  useLayoutEffect(() => {
    const element = ref.current;
    if (element === null) return undefined;
    const measure = (): void => {
      const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      const [width, height] = [element.clientWidth, element.clientHeight];
      setRoom((now) =>
        now !== null && now.width === width && now.height === height && now.rem === rem
          ? now
          : { width, height, rem },
      );
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return { ref, room };
}
