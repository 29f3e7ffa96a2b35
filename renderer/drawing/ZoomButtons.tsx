import { ZOOM_STEP } from './keys.ts';
import type { Drawing } from './useDrawing.ts';

/** Buttons that enlarge a drawing, shrink it, or show all of it. */
export function ZoomButtons({ drawing }: { readonly drawing: Drawing }) {
  return (
    <div className="drawing-zoom" role="group" aria-label="Size of the drawing">
      <button type="button" onClick={() => drawing.zoomBy(1 / ZOOM_STEP)} aria-label="Smaller">
        −
      </button>
      <button type="button" onClick={() => drawing.zoomBy(ZOOM_STEP)} aria-label="Larger">
        +
      </button>
      <button type="button" onClick={drawing.showAll}>
        Show all
      </button>
    </div>
  );
}
