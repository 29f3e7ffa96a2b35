const PARTS = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

/** A count of whole steps and eighths: `3`, `1/4`, `2-3/8`. */
export function mixedEighths(count: number): string {
  const eighths = Math.round(count * 8);
  const whole = Math.floor(eighths / 8);
  const part = PARTS[eighths % 8] ?? '';
  if (part === '') return `${whole}`;
  return whole === 0 ? part : `${whole}-${part}`;
}
