import type { EarlierOutput } from './earlier-output.ts';
import { Refusal } from './refusal.ts';

/** Others' files that are named before it is only said how many more there are. */
const NAMED = 3;

/** Refuses to take the place of an earlier output in which others' files lie: they would be lost with it. */
export function refuseOthers(target: string, { others }: EarlierOutput): void {
  if (others.length === 0) return;
  const named = others.slice(0, NAMED).join(', ');
  const more = others.length > NAMED ? ` and ${others.length - NAMED} more` : '';
  throw new Refusal(
    `${target} holds files that this program did not write (${named}${more}), which would be lost; move them out of it, or name a new place`,
  );
}
