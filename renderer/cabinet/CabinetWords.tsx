import { SmallGap } from '../drawing/SmallGap.tsx';
import { gapFigure } from './gap-words.ts';
import { PickedFlag } from './PickedFlag.tsx';
import { placeWords, type WordsOf } from './place-words.ts';

/** Names, sizes and gaps over the fronts; each front's name and the list of gaps say them without the eye. */
export function CabinetWords(props: WordsOf) {
  const { elevation, picked, unit, projection, rem } = props;
  const { names, sizes, gaps } = placeWords(props);
  const front = elevation.drawers.find(({ rowId }) => rowId === picked)?.front;
  return (
    <g aria-hidden="true" className="cabinet-words">
      {names.map(({ text, x, y }) => (
        <text key={`${x} ${y}`} className="cabinet-front-name" x={x} y={y}>
          {text}
        </text>
      ))}
      {sizes.map(({ text, x, y }) => (
        <text key={`${x} ${y}`} className="cabinet-front-size" x={x} y={y}>
          {text}
        </text>
      ))}
      {front === undefined ? null : <PickedFlag corner={projection.toScreen(front)} rem={rem} />}
      {gaps.map((gap) => (
        <SmallGap
          key={`${gap.rowIds.join(' ')} ${gap.edge}`}
          from={projection.toScreen(gap.from)}
          to={projection.toScreen(gap.to)}
          figure={gap.figure}
          text={gapFigure(gap, unit)}
          rem={rem}
          wrong={gap.mm < 0}
        />
      ))}
    </g>
  );
}
