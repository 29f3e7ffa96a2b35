import type { Margin, ScrewPlace } from '../fastening/types.ts';

/** The margin in mm that a screw has least of; null when it has none in mm. */
export const tightestMargin = ({ margins }: Pick<ScrewPlace, 'margins'>): Margin | null =>
  margins
    .filter(({ limit }) => limit !== 'angle' && limit !== 'withdrawal')
    .toSorted((a, b) => a.over - b.over)[0] ?? null;
