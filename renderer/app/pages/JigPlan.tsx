import { useEffect, useState } from 'react';
import type { StudyOutcome } from '../../../core/jigs/sharing/study-jigs.ts';
import { JigPlanPage } from '../../jig-plan/JigPlanPage.tsx';
import { selectRow, setPage, setSharing } from '../../store/changes.ts';
import { useProgram } from '../../store/use-program.ts';
import { designLine } from '../design-line.ts';

/** Which drawers share jigs. */
export function JigPlan() {
  const draft = useProgram((state) => state.draft);
  const designed = useProgram((state) => state.designed);
  const unit = useProgram(({ view }) => view.unit);
  const [study, setStudy] = useState<StudyOutcome | null>(null);
  useEffect(() => {
    let current = true;
    // What was worked out before stays until the next is there.
    void designLine()
      .studyJigs()
      .then((outcome) => {
        if (current && outcome !== null) setStudy(outcome);
      });
    return () => {
      current = false;
    };
  }, [designed]);
  return (
    <main aria-label="Jig plan">
      <JigPlanPage
        draft={draft}
        designed={designed}
        study={study}
        unit={unit}
        onSharing={setSharing}
        onRow={(rowId) => {
          selectRow(rowId);
          setPage('bench');
        }}
      />
    </main>
  );
}
