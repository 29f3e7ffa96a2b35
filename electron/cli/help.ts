import { CAUTIONS } from '../../core/cautions/cautions.ts';
import { KNOWN, type Call } from './arguments.ts';

const STANDARD = `  --standard S   a shop standard: ${KNOWN.standards.join(', ')},
                 or the path of a JSON file; the first is the default`;

const UNITS = `  --units U      in or mm: what bare numbers in the order mean, and what
                 people read on labels and in tables; in is the default`;

const GENERAL = `overhang - from an overlay standard and an order to the jigs that set every front

  overhang make ORDER --out DIR   jigs, cut files and tables for an order
  overhang check ORDER            reads and fits an order, writes nothing
  overhang help make              the options of a command

ORDER is a CSV file (see README) or a project file, which also holds a shop standard and may
hold a machine profile and what jigs register on; options take their place.
Exit codes: 0 done, 1 faults in the input, 2 a bad call.
`;

const MAKE = `overhang make ORDER --out DIR [options]

Fits every drawer of the order, designs the jigs that set its fronts, and writes
a folder of cut files and tables. With any fault in the order nothing is written.

  --out DIR      the folder to write; it is moved into place whole
${STANDARD}
  --machine M    a machine profile: ${KNOWN.machines.join(', ')},
                 or the path of a JSON file; the first is the default
  --jigs J       edge (fences, spacers, step profiles; the default) or corner
                 (handed corner fences where they fit)
${UNITS}
  --date D       YYYY-MM-DD, engraved on every part; without it no date is
  --name N       the order's name on the parts; the file's name is the default

Example:
  overhang make kitchen.csv --machine laser-3 --date 2026-12-01 --out kitchen-jigs
`;

const CHECK = `overhang check ORDER [options]

Reads and fits the order and tells every fault at once. Writes nothing.

${STANDARD}
${UNITS}

Example:
  overhang check kitchen.csv --standard frameless-undermount --units mm
`;

/** The text of `--help`, for one command or for all. */
export function help(topic: Call['topic']): string {
  const text = topic === 'make' ? MAKE : topic === 'check' ? CHECK : GENERAL;
  return topic === 'check' ? text : `${text}\n${cautionText()}`;
}

/** The usual cautions as the commands print them. */
export const cautionText = (): string =>
  ['Cautions:', ...CAUTIONS.map((caution) => `  - ${caution}`), ''].join('\n');
