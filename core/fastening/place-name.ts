import type { Impossible } from './types.ts';

/** A place in words, for someone facing the cabinet: `the bottom right corner`. */
export function placeName({ corner, index, along }: Pick<Impossible, 'corner' | 'index' | 'along'>): string {
  if (index === 0) return `the ${corner.end} ${corner.hand} corner`;
  const place = `place ${index} from the ${corner.end} ${corner.hand} corner`;
  return along === 'end' ? `${place} along the ${corner.end}` : `${place} up the ${corner.hand} side`;
}
