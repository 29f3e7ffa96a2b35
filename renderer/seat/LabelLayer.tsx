import type { RefObject } from 'react';
import type { SeatLabel } from './seat-labels.ts';

interface LabelLayerProps {
  readonly labels: readonly SeatLabel[];
  readonly layer: RefObject<HTMLDivElement | null>;
}

/** The words of the picture, in the page: they can be read aloud, enlarged and printed. */
export function LabelLayer({ labels, layer }: LabelLayerProps) {
  return (
    <div ref={layer} className="seat-labels">
      <svg className="seat-leaders" aria-hidden="true">
        {labels
          .filter(({ kind }) => kind === 'dimension')
          .map(({ id }) => (
            <path key={id} data-leader={id} />
          ))}
      </svg>
      {labels.map((label) => (
        <LabelWords key={label.id} label={label} />
      ))}
    </div>
  );
}

export const LabelWords = ({ label: { id, kind, words, figure } }: { readonly label: SeatLabel }) => (
  <span data-label={id} className={`seat-label seat-label-${kind}`}>
    {words}
    {figure === undefined ? null : (
      <>
        {' '}
        <b>{figure}</b>
      </>
    )}
  </span>
);
