import type { Finding } from '../findings/finding.ts';
import { hasErrors } from '../findings/make.ts';
import { bounds, type Bounds } from '../geometry/measure.ts';
import { checkDrawing } from './check-drawing.ts';
import type { Drawing } from './drawing.ts';
import { withoutDuplicates } from './duplicates.ts';

/** A drawing fit to be written, or null with the errors; what was left out, and what is worth knowing. */
export interface Prepared {
  readonly drawing: (Drawing & { readonly extents: Bounds }) | null;
  readonly duplicatesRemoved: number;
  readonly findings: readonly Finding[];
}

/** A drawing is prepared once, however many files and reports are made of it. */
const known = new WeakMap<Drawing, Prepared>();

/** What every writer does first: refuse what can't be written, and draw nothing twice. */
export function prepareDrawing(drawing: Drawing): Prepared {
  const prepared = known.get(drawing) ?? prepare(drawing);
  known.set(drawing, prepared);
  return prepared;
}

function prepare(drawing: Drawing): Prepared {
  const problems = checkDrawing(drawing);
  if (hasErrors(problems)) return { drawing: null, duplicatesRemoved: 0, findings: problems };
  const { features, removed, findings } = withoutDuplicates(drawing.features);
  return {
    drawing: { ...drawing, features, extents: bounds(...features.map(({ contour }) => contour)) },
    duplicatesRemoved: removed,
    findings: [...problems, ...findings],
  };
}
