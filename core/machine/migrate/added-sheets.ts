import { writeLength } from '../../units/write-length.ts';

/** A size of sheet as a document has it, as many as wanted. */
const size = (name: string, width: string, height: string) => ({
  name,
  width,
  height,
  count: null,
  offcut: false,
});

/**
 * How parts are laid out for a machine of this kind; all sizes are common practice, no source: the bed of a shop
 * laser, and panels of 4 x 8 ft as they are sold in metric. `kerf` in mm: the spacing is no less.
 */
export function addedSheets(kind: unknown, kerf: number) {
  const router = kind === 'router';
  const spacing = router ? 12 : 3;
  return {
    stock: router
      ? [size('full sheet', '2440 mm', '1220 mm'), size('half sheet', '1220 mm', '1220 mm')]
      : [size('sheet', '600 mm', '400 mm')],
    edgeMargin: writeLength(Math.max(router ? 15 : 5, kerf / 2), 'mm'),
    spacing: writeLength(Math.max(spacing, kerf), 'mm'),
    turn: 'quarter',
    effort: 200,
  };
}

/** Tabs of a tool or beam, common practice, no source; marks leave outlines closed. A laser's parts lie where they fall. */
export const addedTabs = (kind: unknown) =>
  kind === 'router'
    ? { use: 'marks', width: '6 mm', spacing: '200 mm' }
    : { use: 'none', width: '0.6 mm', spacing: '150 mm' };
