import type { StandardView } from '../../core/scene/types.ts';
import { ENLARGE } from './look-key.ts';
import { isView, type Look, type SeatAction } from './seat-state.ts';

interface LookButtonsProps {
  readonly views: readonly StandardView[];
  readonly look: Look;
  readonly dispatch: (action: SeatAction) => void;
}

/** The standard views. */
export function LookButtons({ views, look, dispatch }: LookButtonsProps) {
  return (
    <div className="seat-buttons" role="group" aria-label="Look at the seat">
      {views.map((view) => (
        <button
          key={view.id}
          type="button"
          aria-pressed={isView(look, view.id)}
          onClick={() => dispatch({ do: 'view', view: view.id })}
        >
          {view.title}
        </button>
      ))}
    </div>
  );
}

/** How large the picture is. */
export function SizeButtons({ dispatch }: Pick<LookButtonsProps, 'dispatch'>) {
  return (
    <div className="seat-buttons seat-fixed seat-size" role="group" aria-label="Size of the picture">
      <button type="button" aria-label="Smaller" onClick={() => dispatch({ do: 'enlarge', by: 1 / ENLARGE })}>
        −
      </button>
      <button type="button" aria-label="Larger" onClick={() => dispatch({ do: 'enlarge', by: ENLARGE })}>
        +
      </button>
      <button type="button" onClick={() => dispatch({ do: 'show all' })}>
        Show all
      </button>
    </div>
  );
}
