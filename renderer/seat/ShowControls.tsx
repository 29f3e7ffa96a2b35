import type { LengthUnit } from '../../core/order/types.ts';
import { sectionText } from '../../core/scene/section-text.ts';
import type { Section } from '../../core/scene/types.ts';
import type { SeatAction, SeatState } from './seat-state.ts';

interface ShowControlsProps {
  readonly state: SeatState;
  readonly section: Section;
  /** mm; null when whole. */
  readonly cutAt: number | null;
  readonly unit: LengthUnit;
  readonly dispatch: (action: SeatAction) => void;
}

/** Cut through the seat, draw it apart, show what must stay clear. */
export function ShowControls({ state, section, cutAt, unit, dispatch }: ShowControlsProps) {
  const { cut, apart, zones } = state;
  return (
    <>
      <label className="seat-tick">
        <input
          type="checkbox"
          checked={cut !== null}
          onChange={({ target }) => dispatch({ do: 'cut', at: target.checked ? 0.5 : null })}
        />
        Cut open
      </label>
      <span className="seat-slider">
        <input
          type="range"
          min={0}
          max={1}
          step={0.01}
          value={cut ?? 0.5}
          disabled={cut === null}
          aria-label="Place of the cut"
          aria-valuetext={cutAt === null ? 'not cut' : sectionText(section, cutAt, unit)}
          onChange={({ target }) => dispatch({ do: 'cut', at: target.valueAsNumber })}
        />
      </span>
      <label className="seat-slider">
        Draw apart
        <input
          type="range"
          min={0}
          max={1}
          step={0.05}
          value={apart}
          aria-valuetext={`${Math.round(apart * 100)} %`}
          onChange={({ target }) => dispatch({ do: 'apart', share: target.valueAsNumber })}
        />
      </label>
      <label className="seat-tick">
        <input
          type="checkbox"
          checked={zones}
          onChange={({ target }) => dispatch({ do: 'zones', shown: target.checked })}
        />
        Spaces to keep clear
      </label>
    </>
  );
}
