import { memo } from 'react';
import { OPERATIONS } from '../../core/machine/operations.ts';
import type { Feature } from '../../core/parts/types.ts';
import { operationPath } from './feature-path.ts';
import { LAYER_LINES } from './layer-lines.ts';

interface PartLinesProps {
  readonly features: readonly Feature[];
  /** What the machine follows; null when it is not shown. */
  readonly followed: readonly Feature[] | null;
  /** Of millimetres, y down. */
  readonly transform: string;
}

/** The contours of a part, each operation with its own line; over them the path of the cut. */
export function PartLines({ features, followed, transform }: PartLinesProps) {
  return (
    <g aria-hidden="true" transform={transform}>
      <OperationLines features={features} />
      {followed === null ? null : (
        <path
          className="parts-line parts-line-path"
          d={OPERATIONS.filter((operation) => operation !== 'engrave')
            .map((operation) => operationPath(followed, operation))
            .join(' ')}
        />
      )}
    </g>
  );
}

/** Redrawn only for another part: engraved text has thousands of points. */
const OperationLines = memo(({ features }: { readonly features: readonly Feature[] }) => (
  <>
    <path
      className="parts-body"
      d={`${operationPath(features, 'cut-outer')} ${operationPath(features, 'cut-inner')}`}
    />
    {LAYER_LINES.map(({ operation, className }) => (
      <path key={operation} className={className} d={operationPath(features, operation)} />
    ))}
  </>
));
