import { useMemo } from 'react';
import { aidScene } from '../../../core/scene/aid-scene.ts';
import { seatScene } from '../../../core/scene/seat-scene.ts';
import { SeatView } from '../../seat/SeatView.tsx';
import type { Means } from '../../seat/useMeans.ts';
import { useProgram } from '../../store/use-program.ts';
import { pictureShown } from '../first-picture.ts';
import { useReducedMotion } from '../useReducedMotion.ts';

/** Lets a browser's own tools, and `npm run speed`, see when a picture of the seat was on the screen. */
function markPicture(means: Means): void {
  // The frame that it is in has been painted when what is put off in it is done.
  requestAnimationFrame(() => setTimeout(mark, 0, `seat-${means}`));
  pictureShown(means);
}

function mark(name: string): void {
  performance.clearMarks(name);
  performance.mark(name);
}

export function Seat() {
  const { rowId, jigId } = useProgram(({ selection }) => selection);
  const fit = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fits[rowId]));
  const jig = useProgram(({ designed }) => designed?.jigs.find(({ id }) => id === jigId));
  const uses = useProgram(({ designed }) => designed?.uses);
  const aids = useProgram(({ designed }) => designed?.aids);
  const machine = useProgram(({ draft }) => draft.machine);
  const standard = useProgram(({ draft }) => draft.standard);
  const fastening = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fastenings[rowId]));
  const unit = useProgram(({ view }) => view.unit);
  const reducedMotion = useReducedMotion();
  const scene = useMemo(() => {
    if (fit === undefined || jig === undefined) return null;
    const own = (uses ?? []).filter((use) => use.rowId === rowId && use.jigId === jig.id);
    if (own.length > 0) {
      const { box } = standard;
      return seatScene({ fit, jig, uses: own, machine, box, fastening: fastening ?? null, unit });
    }
    const aid = (aids ?? []).find((one) => one.rowId === rowId && one.jigId === jig.id);
    return aid === undefined || fastening === undefined
      ? null
      : aidScene({ fastening, jig, corner: aid.corner, standard, machine });
  }, [fit, jig, uses, aids, rowId, machine, standard, fastening, unit]);
  return <SeatView scene={scene} unit={unit} reducedMotion={reducedMotion} onFrame={markPicture} />;
}
