import { useEffect, useState } from 'react';
import type { PartDetail } from '../../../core/session/types.ts';
import { PartView } from '../../parts/PartView.tsx';
import { selectPart } from '../../store/changes.ts';
import { useProgram } from '../../store/use-program.ts';
import { designLine } from '../design-line.ts';

export function Part() {
  const designed = useProgram((state) => state.designed);
  const partId = useProgram(({ selection }) => selection.partId);
  const machine = useProgram(({ draft }) => draft.machine);
  const unit = useProgram(({ view }) => view.unit);
  const [detail, setDetail] = useState<PartDetail | null>(null);
  useEffect(() => {
    let current = true;
    if (partId !== null) {
      void designLine()
        .part(partId)
        .then((found) => {
          if (current) setDetail(found);
        });
    }
    return () => {
      current = false;
    };
  }, [partId, designed]);
  return (
    <PartView
      parts={designed?.parts ?? []}
      partId={partId}
      detail={detail}
      machine={machine}
      unit={unit}
      onSelect={selectPart}
    />
  );
}
