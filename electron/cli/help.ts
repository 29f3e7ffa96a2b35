import { PAPER_SIZES } from './paper-settings.ts';
import { CAUTIONS } from '../../core/cautions/cautions.ts';
import { KNOWN, type Call } from './arguments.ts';

const STANDARD = `  --standard S   a shop standard: ${KNOWN.standards.join(', ')},
                 or the path of a JSON file; the first is the default`;

const UNITS = `  --units U      in or mm: what bare numbers in the order mean, and what
                 people read on labels and in tables; in is the default`;

const GENERAL = `overhang - from an overlay standard and an order to the jigs that set every front

  overhang make ORDER --out DIR   jigs, cut files and tables for an order, or for several
  overhang check ORDER            reads and fits an order, writes nothing
  overhang help make              the options of a command

ORDER is a CSV file (see README) or a project file, which also holds a shop standard and may
hold a machine profile and what jigs register on; options take their place.
Exit codes: 0 done, 1 faults in the input, 2 a bad call.
`;

const MAKE = `overhang make ORDER... --out DIR [options]

Fits every drawer of the order, designs the jigs that set its fronts, and writes
a folder of cut files and tables. With any fault in the order nothing is written.
Of several orders each gets a folder in DIR with the order's name (kitchen, kitchen-2); one
that fails is told and does not stop the others. An order whose files are there already,
made by this version from the same text, standard, machine and options, is unchanged and not
made again; of one that changed, the new files take the place of the old when they are whole.

  --out DIR      the folder to write; it is moved into place whole
  --zip          a zip file in place of the folder; of one order DIR is its name
  --again        makes also what is unchanged
  --jobs N       orders made at once; as many as the machine has cores is the default.
                 The files are the same whatever N is
  --summary FILE writes what became of every order as JSON (below)
${STANDARD}
  --machine M    a machine profile: ${KNOWN.machines.join(', ')},
                 or the path of a JSON file; the first is the default
  --jigs J       edge (fences, spacers, step profiles; the default) or corner
                 (handed corner fences where they fit)
  --jigs-share S each (every distinct overhang has its own jig; the default), fewest (drawers
                 share jigs as far as the slides' adjusters put right), or a number
                 of jigs to make at most for less adjusting
  --formats F    the cut files to write: any of ${KNOWN.kinds('formats').join(',')}; all is the default,
                 none writes lists only
  --lists L      the lists to write: any of ${KNOWN.kinds('lists').join(',')};
                 all is the default, none writes cut files only
  --paper P      what to print, as PDF: any of ${KNOWN.kinds('paper').join(',')};
                 all but calibration is the default, none writes none
  --paper-size S ${PAPER_SIZES.join(', ')};
                 the first is the default, and prints on either
  --printer-factors X,Y  from the printer calibration: across the short side, along the long side
  --extras E     more to write: any of ${KNOWN.kinds('extras').join(',')}; none is the default
  --only-jigs I  the parts of these jigs only, by their ids: B1,S2
${UNITS}
  --date D       YYYY-MM-DD, engraved on every part; without it no date is
  --name N       the order's name on the parts; the file's name is the default

Example:
  overhang make kitchen.csv --machine laser-3 --date 2026-12-01 --out kitchen-jigs
  overhang make orders/*.csv --zip --summary made.json --out jigs

The JSON of --summary:
  format "overhang-summary", version 1
  made, unchanged, failed          numbers of orders
  drawers, jigs, parts, warnings   sums over the orders that were made
  seconds                          of the whole call
  orders                           a list in the order of the call, each with
    order      its path as the call gives it
    place      its folder or zip
    state      "made", "unchanged" or "failed"
    drawers, jigs, parts, files, errors, warnings
               numbers; 0 where the order did not come so far
    reason     why it failed, where no finding says it; else null
    seconds    of this order
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
