/** What is wrong with a value, in words that say what it is of; '' when nothing is. */

export const near = (value: number, wanted: number, within: number, what: string): string =>
  Math.abs(value - wanted) < within ? '' : `${what}: ${value} is not within ${within} of ${wanted}`;

export const below = (value: number, limit: number, what: string): string =>
  value < limit ? '' : `${what}: ${value} is not below ${limit}`;

export const same = (value: unknown, wanted: unknown, what: string): string => {
  const [is, should] = [JSON.stringify(value), JSON.stringify(wanted)];
  return is === should ? '' : `${what}: ${is} is not ${should}`;
};

export const has = (text: string, part: string, what: string): string =>
  text.includes(part) ? '' : `${what}: no ${part} in ${text}`;
