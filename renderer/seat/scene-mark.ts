import type { SeatScene } from '../../core/scene/types.ts';

/** mm: a thousandth is nothing in a picture, and browsers may differ in the last digits of a sine. */
const STEPS = 1000;

/** A short text that two scenes share only where they look the same. */
export function sceneMark(scene: SeatScene): string {
  const text = JSON.stringify(scene, (_key, value: unknown) =>
    typeof value === 'number' ? Math.round(value * STEPS) / STEPS : value,
  );
  return fnv1a(text).toString(16);
}

/** FNV-1a of 32 bits (draft-eastlake-fnv), of a text's UTF-16 codes: of ASCII, of its bytes. */
export function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at += 1) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}
