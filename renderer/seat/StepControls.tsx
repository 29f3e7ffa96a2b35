import type { Step } from '../../core/scene/types.ts';
import type { SeatAction, SeatState } from './seat-state.ts';

interface StepControlsProps {
  readonly steps: readonly Step[];
  /** Said while no step is shown. */
  readonly notes: readonly string[];
  readonly state: SeatState;
  readonly dispatch: (action: SeatAction) => void;
}

/** The use of the jig, step by step: by name, one on, one back, or played. */
export function StepControls({ steps, notes, state, dispatch }: StepControlsProps) {
  const { step, playing } = state;
  const last = steps.length - 1;
  const shown = step === null ? null : (steps[step] ?? null);
  return (
    <div className="seat-steps">
      <ol className="seat-buttons" aria-label="Steps of use">
        {steps.map(({ id, title }, index) => (
          <li key={id}>
            <button
              type="button"
              aria-pressed={index === step}
              onClick={() => dispatch({ do: 'step', step: index === step ? null : index })}
            >
              {index + 1} {title}
            </button>
          </li>
        ))}
      </ol>
      <div className="seat-play">
        <div className="seat-buttons" role="group" aria-label="Play the use of the jig">
          <button
            type="button"
            disabled={step === null || step === 0}
            onClick={() => dispatch({ do: 'step', step: (step ?? 0) - 1 })}
          >
            Previous
          </button>
          <button
            type="button"
            onClick={() =>
              dispatch(
                playing
                  ? { do: 'play', playing: false }
                  : { do: 'step', step: step === null || step === last ? 0 : step, playing: true },
              )
            }
          >
            {playing ? 'Pause' : 'Play'}
          </button>
          <button
            type="button"
            disabled={step === last}
            onClick={() => dispatch({ do: 'step', step: step === null ? 0 : step + 1 })}
          >
            Next
          </button>
        </div>
        <p className="seat-words" role="status">
          {shown === null ? ['The jig in its seat, the box against it.', ...notes].join(' ') : shown.words}
        </p>
      </div>
    </div>
  );
}
