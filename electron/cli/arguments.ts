import { parseArgs } from 'node:util';
import type { Registration } from '../../core/jigs/plan-types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { checkDate } from '../../core/order/date.ts';
import { MACHINES, STANDARDS } from '../../shared/library.ts';
import { BadCall } from './output.ts';

/** A call of the command line, checked. */
export interface Call {
  readonly command: 'make' | 'check' | 'help' | 'version';
  /** The command that help is asked for. */
  readonly topic?: 'make' | 'check';
  readonly order: string;
  readonly standard?: string;
  /** Absent: the project's, or the usual one. */
  readonly machine?: string;
  readonly unit?: LengthUnit;
  readonly registration?: Registration;
  readonly date?: string;
  readonly name?: string;
  readonly out: string;
}

const OPTIONS = {
  standard: { type: 'string' },
  machine: { type: 'string' },
  units: { type: 'string' },
  jigs: { type: 'string' },
  date: { type: 'string' },
  name: { type: 'string' },
  out: { type: 'string' },
  help: { type: 'boolean' },
  version: { type: 'boolean' },
} as const;

const COMMANDS = ['make', 'check'] as const;

/** Options that only `make` takes. */
const ONLY_MAKE = ['machine', 'jigs', 'date', 'name', 'out'] as const;

/** Reads the words after the program's name; throws `BadCall` with what is wrong and what would be accepted. */
export function readArguments(words: readonly string[]): Call {
  const { values, positionals } = parse(words);
  const [first, order, ...extra] = positionals;
  const topic = COMMANDS.find((command) => command === first);
  const base: Call = {
    command: 'help',
    order: order ?? '',
    out: values.out ?? '',
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
  if (extra.length > 0) {
    throw new BadCall(`${topic} takes one order; "${extra.join('", "')}" is one too many`);
  }
  if (topic === 'check') {
    const stray = ONLY_MAKE.find((option) => values[option] !== undefined);
    if (stray !== undefined) throw new BadCall(`check writes nothing and takes no --${stray}`);
  } else if (values.out === undefined || values.out === '') {
    throw new BadCall('make needs --out and a folder that it may write');
  }
  if (values.date !== undefined && checkDate(values.date, {}).length > 0) {
    throw new BadCall(`--date is "${values.date}"; write a date as YYYY-MM-DD`);
  }
  const unit = choice('units', values.units, ['in', 'mm'] as const);
  const registration = choice('jigs', values.jigs, ['edge', 'corner'] as const);
  return {
    ...base,
    command: topic,
    ...(registration === undefined ? {} : { registration }),
    ...(values.machine === undefined ? {} : { machine: values.machine }),
    ...(values.standard === undefined ? {} : { standard: values.standard }),
    ...(unit === undefined ? {} : { unit }),
    ...(values.date === undefined ? {} : { date: values.date }),
    ...(values.name === undefined ? {} : { name: values.name }),
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

/** Names of what comes with the program, for help and messages. */
export const KNOWN = { standards: Object.keys(STANDARDS), machines: Object.keys(MACHINES) };
