export interface Term {
  readonly times: number;
  readonly name: string;
}

export interface Row {
  readonly terms: readonly Term[];
  readonly sense: '>=' | '<=' | '=';
  readonly than: number;
}

/** A minimisation in CPLEX's LP format. Variables that are not binary are 0 or more. */
export const lpText = (
  objective: readonly Term[],
  rows: readonly Row[],
  binaries: readonly string[],
): string =>
  [
    'Minimize',
    ` cost: ${sumText(objective)}`,
    'Subject To',
    ...rows.map(({ terms, sense, than }, index) => ` r${index}: ${sumText(terms)} ${sense} ${than}`),
    'Binary',
    ...binaries.map((name) => ` ${name}`),
    'End',
    '',
  ].join('\n');

/** A term a line: readers of the format may limit lines, and fixed decimals keep exponents out. */
const sumText = (terms: readonly Term[]): string =>
  terms.map(({ times, name }) => `${times < 0 ? '-' : '+'} ${decimal(Math.abs(times))} ${name}`).join('\n  ');

const decimal = (value: number): string => (Number.isInteger(value) ? `${value}` : value.toFixed(6));
