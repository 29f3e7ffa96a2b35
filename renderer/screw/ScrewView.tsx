import { useMemo, useState } from 'react';
import type { Fastening } from '../../core/fastening/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { shownScrews } from '../../core/screw-section/shown-screws.ts';
import { screwSection } from '../../core/screw-section/screw-section.ts';
import { HoleWords } from './HoleWords.tsx';
import { MarginTable } from './MarginTable.tsx';
import '../parts/parts.css';
import './screw.css';
import { ScrewDrawing } from './ScrewDrawing.tsx';
import { ScrewList } from './ScrewList.tsx';

export interface ScrewViewProps {
  /** Of the picked drawer; null when it has none. */
  readonly fastening: Fastening | null;
  readonly standard: ShopStandard;
  readonly unit: LengthUnit;
}

/** The screws of a drawer, one at a time to scale, with every limit dimensioned. */
export function ScrewView({ fastening, standard, unit }: ScrewViewProps) {
  const screws = useMemo(
    () => (fastening === null ? [] : shownScrews(fastening, standard)),
    [fastening, standard],
  );
  const [picked, setPicked] = useState(0);
  const [across, setAcross] = useState<'side' | 'rail'>('side');
  const shown = screws[Math.min(picked, screws.length - 1)];
  const section = useMemo(
    () =>
      fastening === null || shown === undefined
        ? null
        : screwSection(fastening, shown.place, shown.screw, standard, across),
    [fastening, shown, standard, across],
  );
  if (fastening === null || shown === undefined || section === null) {
    return <p className="parts-empty">Pick a drawer without faults to see how its front is screwed on.</p>;
  }
  return (
    <div className="screw">
      <ScrewList screws={screws} picked={screws.indexOf(shown)} unit={unit} onPick={setPicked} />
      <div className="screw-main">
        <div className="parts-bar">
          <h3>
            {shown.screw.name}, {section.title}
          </h3>
          <div role="group" aria-label="Which way one looks">
            <button type="button" aria-pressed={across === 'side'} onClick={() => setAcross('side')}>
              Across the side
            </button>
            <button type="button" aria-pressed={across === 'rail'} onClick={() => setAcross('rail')}>
              Across the rail
            </button>
          </div>
        </div>
        <ScrewDrawing key={across} section={section} unit={unit} />
        <div className="parts-below">
          <MarginTable section={section} cures={shown.cures} unit={unit} />
          <HoleWords fastening={fastening} place={shown.place} unit={unit} />
        </div>
      </div>
    </div>
  );
}
