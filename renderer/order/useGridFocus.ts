import { useLayoutEffect, useRef, type FocusEvent, type RefObject } from 'react';
import type { ActiveCell } from './useActiveCell.ts';

/**
 * Keeps the keyboard in the table once it is there: when its cell goes away, or another one becomes the active cell,
 * that one is focused. A table that does not have the keyboard takes it from nobody.
 */
export function useGridFocus(room: RefObject<HTMLDivElement | null>, active: ActiveCell | null) {
  const held = useRef(false);
  useLayoutEffect(() => {
    const grid = room.current;
    // The editor focuses itself.
    if (grid === null || !held.current || (active !== null && active.edit !== null)) return;
    const cell = grid.querySelector<HTMLElement>('[role="gridcell"][tabindex="0"]') ?? grid;
    if (document.activeElement !== cell) cell.focus();
  });
  return {
    onFocus: (): void => {
      held.current = true;
    },
    // Not called for a cell that is taken away.
    onBlur: ({ currentTarget, relatedTarget }: FocusEvent): void => {
      held.current = relatedTarget instanceof Node && currentTarget.contains(relatedTarget);
    },
  };
}
