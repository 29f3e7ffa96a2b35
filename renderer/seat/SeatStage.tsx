import { useCallback, useContext, useMemo, useReducer, useRef } from 'react';
import type { Showing } from '../../core/scene/shown-seat.ts';
import type { SeatScene } from '../../core/scene/types.ts';
import { useRoom } from '../drawing/useRoom.ts';
import { late } from '../late.tsx';
import { BuiltPicture } from './built-picture.ts';
import { LabelLayer } from './LabelLayer.tsx';
import { LeftCompass } from './LeftCompass.tsx';
import { sightOf } from './look.ts';
import { lookKey } from './look-key.ts';
import { LookButtons, SizeButtons } from './LookButtons.tsx';
import { paletteOf } from './palette.ts';
import { usePlacedLabels } from './placed-labels.ts';
import { seatLabels } from './seat-labels.ts';
import { FIRST_STATE, seatReducer } from './seat-state.ts';
import type { SeatViewProps } from './SeatView.tsx';
import { ShowControls } from './ShowControls.tsx';
import { StepControls } from './StepControls.tsx';
import { StillPicture } from './StillPicture.tsx';
import { useMeans } from './useMeans.ts';
import { usePointerLook } from './usePointerLook.ts';
import { useStepTime } from './useStepTime.ts';
import { useTokens } from './useTokens.ts';

/** Loaded when the seat has been drawn flat. */
const SpaceSeat = late(async () => (await import('./space/SpaceSeat.tsx')).SpaceSeat, null);

/** How much farther back one stands to see all that moves in a step, or that is drawn apart. */
const ROOM = { step: 1.5, apart: 1.7 } as const;

interface SeatStageProps extends SeatViewProps {
  readonly scene: SeatScene;
}

/** The picture of a seat with its words and its controls. */
export function SeatStage({ scene, unit, reducedMotion, onFrame }: SeatStageProps) {
  const [state, dispatch] = useReducer(seatReducer, FIRST_STATE);
  const { ref: host, room } = useRoom();
  const layer = useRef<HTMLDivElement>(null);
  const tokens = useTokens();
  const palette = useMemo(() => paletteOf(tokens), [tokens]);
  const step = state.step === null ? null : (scene.steps[state.step] ?? null);
  const steps = scene.steps.length;
  const onNext = useCallback(() => {
    const next = (state.step ?? 0) + 1;
    dispatch(next < steps ? { do: 'step', step: next, playing: true } : { do: 'play', playing: false });
  }, [state.step, steps]);
  const share = useStepTime({ step: state.step, playing: state.playing, reducedMotion, onNext });
  const back = 1 + (step === null ? 0 : ROOM.step - 1) + (ROOM.apart - 1) * state.apart;
  const sight = useMemo(() => {
    const { enlarged, ...rest } = sightOf(state.look, scene);
    return { ...rest, enlarged: enlarged / back };
  }, [state.look, scene, back]);
  const labels = useMemo(() => seatLabels(scene, unit, step), [scene, unit, step]);
  const pointer = usePointerLook({ host, sight, dispatch });
  const { from, to } = scene.section;
  const cutAt = state.cut === null ? null : from + state.cut * (to - from);
  const { apart, zones } = state;
  const showing = useMemo(
    (): Showing => ({ step, share, apart, cutAt, zones }),
    [step, share, apart, cutAt, zones],
  );
  usePlacedLabels({ labels, layer, sight, room });
  const Built = useContext(BuiltPicture);
  const { means, isDrawn, drawn, lost, tryAgain } = useMeans();
  const onFlat = useCallback(() => onFrame?.('flat'), [onFrame]);
  const onSpace = useCallback(() => {
    drawn();
    onFrame?.('space');
  }, [drawn, onFrame]);
  const picture = { scene, sight, showing, palette };

  return (
    <section className="seat" aria-label={`${scene.jig.id} ${scene.jig.kind} on ${scene.drawer}`}>
      <div className="seat-frame">
        <div
          ref={host}
          className="seat-picture"
          role="application"
          aria-label="Picture of the seat. Arrow keys turn it, Shift and arrow keys move it, plus and minus enlarge and shrink it, 0 shows all."
          tabIndex={0}
          onKeyDown={(event) => {
            const action = event.ctrlKey || event.metaKey || event.altKey ? null : lookKey(event, sight);
            if (action === null) return;
            event.preventDefault();
            dispatch(action);
          }}
          {...pointer}
        >
          {room === null || means !== 'space' ? null : (
            <SpaceSeat {...picture} room={room} onLost={lost} onFrame={onSpace} />
          )}
          {Built === null ? null : <Built scene={scene} sight={sight} showing={showing} labels={labels} />}
          {room === null || isDrawn ? null : (
            <StillPicture
              {...picture}
              room={room}
              onFrame={onFlat}
              isUntouched={state === FIRST_STATE && means !== 'flat'}
            />
          )}
          <LabelLayer labels={labels} layer={layer} />
          <LeftCompass sight={sight} />
          <p className="seat-fixed seat-legend">
            <span aria-hidden="true" /> Faces that touch
          </p>
        </div>
        <SizeButtons dispatch={dispatch} />
      </div>
      {means === 'flat' ? (
        <p className="seat-without" role="status">
          This window draws without WebGL: the seat is the same, but turns less smoothly.{' '}
          <button type="button" onClick={tryAgain}>
            Try again
          </button>
        </p>
      ) : null}
      <div className="seat-row">
        <LookButtons views={scene.views} look={state.look} dispatch={dispatch} />
        <ShowControls state={state} section={scene.section} cutAt={cutAt} unit={unit} dispatch={dispatch} />
      </div>
      <StepControls steps={scene.steps} notes={scene.notes} state={state} dispatch={dispatch} />
    </section>
  );
}
