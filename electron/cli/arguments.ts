import { parseArgs } from 'node:util';
import { isUsual, OUTPUT_GROUPS, OUTPUT_KINDS, type OutputKindId } from '../../core/files/output-kinds.ts';
import { USUAL, type OutputChoice } from '../../core/files/output-choice.ts';
import type { Registration } from '../../core/jigs/plan-types.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { checkDate } from '../../core/order/date.ts';
import { nameFault } from '../../core/order/order-name.ts';
import { quoteText } from '../../core/order/quote-text.ts';
import { MACHINES, STANDARDS } from '../../shared/library.ts';
import { BadCall } from './output.ts';
import { paperSettings } from './paper-settings.ts';

/** A call of the command line, checked. */
export interface Call {
  readonly command: 'make' | 'check' | 'help' | 'version';
  /** The command that help is asked for. */
  readonly topic?: 'make' | 'check';
  /** The first of `orders`. */
  readonly order: string;
  readonly orders: readonly string[];
  readonly standard?: string;
  /** Absent: the project's, or the usual one. */
  readonly machine?: string;
  readonly unit?: LengthUnit;
  readonly registration?: Registration;
  readonly sharing?: JigSharing;
  readonly date?: string;
  readonly name?: string;
  /** The folder of the only order, or the folder that several have theirs in. */
  readonly out: string;
  /** A zip in place of each folder. */
  readonly zip: boolean;
  /** Also what is there already. */
  readonly again: boolean;
  /** Orders made at once; absent: as many as the machine has cores. */
  readonly jobs?: number;
  /** A JSON file to write at the end. */
  readonly summary?: string;
  /** Whether its jigs are there is known when the order has been designed. */
  readonly choice: OutputChoice;
}

const OPTIONS = {
  standard: { type: 'string' },
  machine: { type: 'string' },
  units: { type: 'string' },
  jigs: { type: 'string' },
  'jigs-share': { type: 'string' },
  'only-jigs': { type: 'string' },
  formats: { type: 'string' },
  lists: { type: 'string' },
  paper: { type: 'string' },
  'paper-size': { type: 'string' },
  'printer-factors': { type: 'string' },
  extras: { type: 'string' },
  date: { type: 'string' },
  name: { type: 'string' },
  out: { type: 'string' },
  zip: { type: 'boolean' },
  again: { type: 'boolean' },
  jobs: { type: 'string' },
  summary: { type: 'string' },
  help: { type: 'boolean' },
  version: { type: 'boolean' },
} as const;

const COMMANDS = ['make', 'check'] as const;

/** Options that only `make` takes. */
const ONLY_MAKE = [
  'machine',
  'jigs',
  'jigs-share',
  'only-jigs',
  'formats',
  'lists',
  'paper',
  'paper-size',
  'printer-factors',
  'extras',
  'date',
  'name',
  'out',
  'zip',
  'again',
  'jobs',
  'summary',
] as const;

/** Reads the words after the program's name; throws `BadCall` with what is wrong and what would be accepted. */
export function readArguments(words: readonly string[]): Call {
  const { values, positionals } = parse(words);
  const [first, ...orders] = positionals;
  const [order, ...extra] = orders;
  const topic = COMMANDS.find((command) => command === first);
  const base: Call = {
    command: 'help',
    order: order ?? '',
    orders,
    out: values.out ?? '',
    zip: values.zip === true,
    again: values.again === true,
    choice: USUAL,
  };
  if (values.version === true) return { ...base, command: 'version' };
  if (values.help === true || first === 'help') {
    return topic === undefined ? base : { ...base, topic };
  }
  if (topic === undefined) {
    throw new BadCall(
      first === undefined
        ? 'no command is given; write make or check'
        : `there is no command "${first}"; write make or check`,
    );
  }
  if (order === undefined) throw new BadCall(`${topic} needs an order, a CSV or project file`);
  if (extra.length > 0 && topic === 'check') {
    throw new BadCall(`${topic} takes one order; "${extra.join('", "')}" is one too many`);
  }
  if (topic === 'check') {
    const stray = ONLY_MAKE.find((option) => values[option] !== undefined);
    if (stray !== undefined) throw new BadCall(`check writes nothing and takes no --${stray}`);
  } else if (values.out === undefined || values.out === '') {
    throw new BadCall('make needs --out and a folder that it may write');
  }
  if (values.name !== undefined && extra.length > 0) {
    throw new BadCall('--name names one order; several have the names of their files');
  }
  if (values.summary === '') throw new BadCall('--summary needs a file that it may write');
  const jobs = jobsOf(values.jobs);
  const badName = values.name === undefined ? undefined : nameFault(values.name);
  if (badName !== undefined) throw new BadCall(`--name is ${quoteText(values.name ?? '')}: ${badName}`);
  if (values.date !== undefined && checkDate(values.date, {}).length > 0) {
    throw new BadCall(`--date is "${values.date}"; write a date as YYYY-MM-DD`);
  }
  const unit = choice('units', values.units, ['in', 'mm'] as const);
  const registration = choice('jigs', values.jigs, ['edge', 'corner'] as const);
  const sharing = sharingOf(values['jigs-share']);
  return {
    ...base,
    command: topic,
    choice: {
      kinds: OUTPUT_GROUPS.flatMap(({ id }) => kindsOf(id, values[id])),
      jigs: values['only-jigs'] === undefined ? 'all' : listed('only-jigs', values['only-jigs']),
      paper: paperSettings(values['paper-size'], values['printer-factors']),
    },
    ...(registration === undefined ? {} : { registration }),
    ...(sharing === undefined ? {} : { sharing }),
    ...(values.machine === undefined ? {} : { machine: values.machine }),
    ...(values.standard === undefined ? {} : { standard: values.standard }),
    ...(unit === undefined ? {} : { unit }),
    ...(values.date === undefined ? {} : { date: values.date }),
    ...(values.name === undefined ? {} : { name: values.name }),
    ...(jobs === undefined ? {} : { jobs }),
    ...(values.summary === undefined ? {} : { summary: values.summary }),
  };
}

function parse(words: readonly string[]) {
  try {
    return parseArgs({ args: [...words], options: OPTIONS, allowPositionals: true, strict: true });
  } catch (problem) {
    throw new BadCall(problem instanceof Error ? firstSentence(problem.message) : String(problem));
  }
}

/** Node adds advice about `--` that nobody who mistyped an option needs. */
const firstSentence = (message: string): string => message.split(/\.\s/)[0] ?? message;

function choice<T extends string>(
  option: string,
  value: string | undefined,
  accepted: readonly T[],
): T | undefined {
  if (value === undefined) return undefined;
  const found = accepted.find((word) => word === value);
  if (found === undefined) {
    throw new BadCall(`--${option} is "${value}"; write ${accepted.join(' or ')}`);
  }
  return found;
}

/** More threads than this are a slip of the hand. */
const MOST_JOBS = 256;

function jobsOf(value: string | undefined): number | undefined {
  if (value === undefined) return undefined;
  if (!/^[1-9]\d{0,2}$/.test(value) || Number(value) > MOST_JOBS) {
    throw new BadCall(`--jobs is "${value}"; write a whole number from 1 to ${MOST_JOBS}`);
  }
  return Number(value);
}

/** `each`, `fewest`, or how many jigs the shop is willing to make. */
function sharingOf(value: string | undefined): JigSharing | undefined {
  if (value === undefined || value === 'each' || value === 'fewest') return value;
  if (!/^[1-9]\d{0,5}$/.test(value)) {
    throw new BadCall(`--jigs-share is "${value}"; write each, fewest, or a whole number of jigs, 1 or more`);
  }
  return Number(value);
}

/** The kinds of a group that an option names, the usual ones without it: `dxf,svg`, or `none`. */
function kindsOf(
  group: (typeof OUTPUT_GROUPS)[number]['id'],
  value: string | undefined,
): readonly OutputKindId[] {
  const known = KNOWN.kinds(group);
  if (value === undefined) return known.filter(isUsual);
  const words = listed(group, value);
  if (words.length === 1 && words[0] === 'none') return [];
  const stray = words.find((word) => !known.some((id) => id === word));
  if (stray !== undefined) {
    throw new BadCall(`--${group} names "${stray}"; write any of ${known.join(',')} with commas, or none`);
  }
  return known.filter((id) => words.includes(id));
}

/** Words with commas between them. */
function listed(option: string, value: string): readonly string[] {
  const words = value.split(',').map((word) => word.trim());
  if (words.includes('')) {
    throw new BadCall(`--${option} is "${value}"; write names with a comma between them`);
  }
  return words;
}

/** Names of what comes with the program, for help and messages. */
export const KNOWN = {
  standards: Object.keys(STANDARDS),
  machines: Object.keys(MACHINES),
  kinds: (group: (typeof OUTPUT_GROUPS)[number]['id']): readonly OutputKindId[] =>
    OUTPUT_KINDS.filter((kind) => kind.group === group).map(({ id }) => id),
};
