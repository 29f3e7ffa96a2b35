import type { Operation } from '../../core/machine/operations.ts';

/** How an operation is told: its word, and the class that gives its line a pattern of its own. */
export interface LayerLine {
  readonly operation: Operation;
  readonly word: string;
  readonly className: string;
}

/** In the order of a legend: the outline first. */
export const LAYER_LINES: readonly LayerLine[] = [
  { operation: 'cut-outer', word: 'cut, outside', className: 'parts-line parts-line-outer' },
  { operation: 'cut-inner', word: 'cut, inside', className: 'parts-line parts-line-inner' },
  { operation: 'pocket', word: 'pocket, to a depth', className: 'parts-line parts-line-pocket' },
  { operation: 'drill', word: 'drill', className: 'parts-line parts-line-drill' },
  { operation: 'engrave', word: 'engrave', className: 'parts-line parts-line-engrave' },
];
