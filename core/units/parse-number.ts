/** A number of 0 or more as an exact ratio; `fraction` tells whether it was written with a slash. */
export interface Ratio {
  readonly ok: true;
  readonly numerator: bigint;
  readonly denominator: bigint;
  readonly fraction: boolean;
}

export interface Refusal {
  readonly ok: false;
  /** What is wrong and what would be accepted, without a full stop. */
  readonly reason: string;
}

const refuse = (reason: string): Refusal => ({ ok: false, reason });

/**
 * Reads a whole number, a decimal, a fraction or a mixed number without sign or unit, in plain characters.
 *
 * @example parseNumber('1-7/16') // 23/16
 */
export function parseNumber(text: string): Ratio | Refusal {
  const decimal = /^(\d*)(?:([.,])(\d*))?$/.exec(text);
  if (decimal !== null && /\d/.test(text)) return readDecimal(decimal);
  const mixed = /^(?:(\d+)(?: ?- ?| ))?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (mixed !== null) return readFraction(mixed[1], mixed[2] ?? '', mixed[3] ?? '');
  return refuse(whyNot(text));
}

function readDecimal(match: RegExpExecArray): Ratio | Refusal {
  const [, whole = '', separator = '', decimals = ''] = match;
  // `1,250` is 1250 to some and 1.25 to others; `0,125` and `36,5` are decimals to everybody.
  if (separator === ',' && /^[1-9]\d{0,2}$/.test(whole) && decimals.length === 3) {
    return refuse(
      `the comma before three digits can mean thousands or decimals; write ${whole}${decimals} or ${whole}.${decimals}`,
    );
  }
  return {
    ok: true,
    numerator: BigInt(`${whole}${decimals}`),
    denominator: 10n ** BigInt(decimals.length),
    fraction: false,
  };
}

function readFraction(whole: string | undefined, top: string, under: string): Ratio | Refusal {
  const numerator = BigInt(top);
  const denominator = BigInt(under);
  if (denominator === 0n) return refuse('the fraction has a denominator of 0; write one such as 7/16');
  if (whole === undefined) return { ok: true, numerator, denominator, fraction: true };
  if (numerator >= denominator) {
    return refuse(
      `the fraction ${top}/${under} beside a whole number is not below 1; write ${carried(BigInt(whole), numerator, denominator)}`,
    );
  }
  return { ok: true, numerator: BigInt(whole) * denominator + numerator, denominator, fraction: true };
}

/** A mixed number whose fraction is below 1: `carried(1n, 23n, 16n)` is `2-7/16`. */
function carried(whole: bigint, numerator: bigint, denominator: bigint): string {
  const sum = whole + numerator / denominator;
  const rest = numerator % denominator;
  return rest === 0n ? `${sum}` : `${sum}-${rest}/${denominator}`;
}

function whyNot(text: string): string {
  if (/[.,].*\/|\/.*[.,]/.test(text)) {
    return 'a decimal and a fraction are mixed; write 1-7/16 or 1.4375';
  }
  if (/[.,].*[.,]/.test(text)) {
    return 'there are two decimal separators or a thousands separator; write 1250.5 or 1250,5';
  }
  if (/\/.*\//.test(text)) {
    return 'there are two fraction bars, as in a date; write one fraction such as 7/16';
  }
  if (/^\d+( \d+)+$/.test(text)) {
    return `there is a space between digits; write ${text.replaceAll(' ', '')}, or a fraction such as 1 7/16`;
  }
  return 'this is not a number; write one such as 1-7/16, 1.4375 or 36,5';
}
