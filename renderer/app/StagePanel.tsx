import type { ComponentType } from 'react';
import { late } from '../late.tsx';
import type { StageName } from '../store/types.ts';
import { useProgram } from '../store/use-program.ts';
import { ActionButton } from './ActionButton.tsx';

/** What is looked at: the jig in its seat, the cabinet, or a flat part. */
export function StagePanel() {
  const stage = useProgram(({ view }) => view.stage);
  const { title, Stage } = STAGES[stage];
  return (
    <section className="bench-panel bench-stage" aria-labelledby="stage-title">
      <header>
        <h2 id="stage-title">{title}</h2>
        <ActionButton action="stage.seat" label="Seat" />
        <ActionButton action="stage.cabinet" label="Cabinet" />
        <ActionButton action="stage.part" label="Part" />
        <ActionButton action="stage.screw" label="Screws" />
        <ActionButton action="stage.gaps" label="Gaps" />
      </header>
      <div className="bench-body">
        <Stage />
      </div>
    </section>
  );
}

const DRAWING = <p className="bench-waiting">Drawing…</p>;

// Most of it is on its way since `begin.ts`.
const Seat = late(async () => (await import('./stages/Seat.tsx')).Seat, DRAWING);
const Cabinet = late(async () => (await import('./stages/Cabinet.tsx')).Cabinet, DRAWING);
const Part = late(async () => (await import('./stages/Part.tsx')).Part, DRAWING);
const Screws = late(async () => (await import('./stages/Screws.tsx')).Screws, DRAWING);
const Gaps = late(async () => (await import('./stages/Gaps.tsx')).Gaps, DRAWING);

/** Each is loaded when it is first looked at, so that the order's table does not wait for it. */
const STAGES = {
  seat: { title: 'Seat', Stage: Seat },
  cabinet: { title: 'Cabinet', Stage: Cabinet },
  part: { title: 'Part', Stage: Part },
  screw: { title: 'Screws', Stage: Screws },
  gaps: { title: 'Gaps', Stage: Gaps },
} as const satisfies Readonly<Record<StageName, { readonly title: string; readonly Stage: ComponentType }>>;

/** Ends when a stage can be shown without a wait. */
export const stageLoaded = async (stage: StageName): Promise<void> => {
  await STAGES[stage].Stage.load();
};
