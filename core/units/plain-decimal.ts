/**
 * The shortest decimal that is this number, without an exponent when it is small.
 *
 * @example plainDecimal(1.5e-7) // '0.00000015'
 */
export function plainDecimal(value: number): string {
  const shortest = String(value);
  const parts = /^(-?)(\d)(?:\.(\d+))?e-(\d+)$/.exec(shortest);
  if (parts === null) return shortest;
  const [, sign = '', first = '', rest = '', exponent = ''] = parts;
  return `${sign}0.${'0'.repeat(Number(exponent) - 1)}${first}${rest}`;
}
