import { readFile } from 'node:fs/promises';
import { basename, extname } from 'node:path';
import type { Finding, Outcome } from '../../core/findings/finding.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import { safeName } from '../../core/files/file-name.ts';
import { nameFault } from '../../core/order/order-name.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import type { Registration } from '../../core/jigs/plan-types.ts';
import type { JigSharing } from '../../core/jigs/sharing/types.ts';
import type { Order } from '../../core/order/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import { readJson } from '../../core/order/read-json.ts';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { decodeText } from '../../shared/decode-text.ts';
import { extensionOf, PROJECT_EXTENSIONS } from '../../shared/document-kinds.ts';
import { MACHINES, STANDARDS } from '../../shared/library.ts';
import { MAX_DOCUMENT_BYTES, tooLarge } from '../files/read-document.ts';
import type { Call } from './arguments.ts';
import { BadCall } from './output.ts';

type Parse<T> = (json: unknown, file: string) => Outcome<T | null>;

/** A machine profile by its name or by the path of its file; without a name the first that is known. */
export const loadMachine = (name = Object.keys(MACHINES)[0] ?? ''): Promise<Outcome<MachineProfile | null>> =>
  loadNamed('machine', name, MACHINES, parseMachine);

/** A shop standard likewise. */
export const loadStandard = (name = Object.keys(STANDARDS)[0] ?? ''): Promise<Outcome<ShopStandard | null>> =>
  loadNamed('standard', name, STANDARDS, parseStandard);

/** Whether a path names a project file, by its ending. */
export const isProject = (path: string): boolean =>
  PROJECT_EXTENSIONS.some((known) => known === extensionOf(path));

/** What a call names: its order and the shop standard that goes with it. */
export interface Loaded {
  /** The order's file as it was read. */
  readonly text: string;
  readonly order: Order;
  readonly standard: ShopStandard;
  /** Of a project file that holds them. */
  readonly machine?: MachineProfile;
  readonly registration?: Registration;
  readonly sharing?: JigSharing;
}

/**
 * Reads the order of a call and its shop standard. A project file holds both; `--standard` takes the place
 * of the one that it holds. The value is null when the order cannot even be begun.
 */
export async function loadOrder(call: Call): Promise<Outcome<Loaded | null>> {
  const text = await readTextFile(call.order);
  const file = basename(call.order);
  const findings: Finding[] = [];
  const given = call.standard === undefined ? null : await loadStandard(call.standard);
  findings.push(...(given?.findings ?? []));
  if (given !== null && given.value === null) return { value: null, findings };

  if (isProject(call.order)) {
    const project = parseProject(parseJson(text, call.order), file);
    findings.push(...project.findings);
    if (project.value === null) return { value: null, findings };
    const { order, standard, ...made } = project.value;
    return {
      value: { ...made, text, order: renamed(order, call), standard: given?.value ?? standard },
      findings,
    };
  }

  const known = given ?? (await loadStandard());
  const standard = known.value;
  if (standard === null) return { value: null, findings: known.findings };
  const order = readOrderCsv(text, {
    file,
    name: call.name ?? nameFromFile(basename(call.order, extname(call.order))),
    unit: call.unit ?? 'in',
    standard,
    ...(call.date === undefined ? {} : { date: call.date }),
  });
  return { value: { text, order: order.value, standard }, findings: [...findings, ...order.findings] };
}

/** A file's name as an order's; one that cannot be engraved is made fit, as a folder's name is. */
const nameFromFile = (name: string): string => (nameFault(name) === undefined ? name : safeName(name));

const renamed = (order: Order, call: Call): Order => ({
  ...order,
  name: call.name ?? order.name,
  ...(call.date === undefined ? {} : { date: call.date }),
  unit: call.unit ?? order.unit,
});

async function loadNamed<T>(
  what: string,
  name: string,
  known: Readonly<Record<string, unknown>>,
  parse: Parse<T>,
): Promise<Outcome<T | null>> {
  if (Object.hasOwn(known, name)) return parse(known[name], name);
  if (extname(name) === '' && !name.includes('/')) {
    throw new BadCall(
      `there is no ${what} "${name}"; write ${Object.keys(known).join(', ')}, or the path of a JSON file`,
    );
  }
  return parse(parseJson(await readTextFile(name), name), basename(name));
}

function parseJson(text: string, path: string): unknown {
  const { value, findings } = readJson(text, path);
  const [fault] = findings;
  if (fault !== undefined) throw new BadCall(`${path} is not JSON that can be read. ${fault.message}`);
  return value;
}

/** The text of a file; throws `BadCall` with what hinders it. */
export async function readTextFile(path: string): Promise<string> {
  const bytes = await readFile(path).catch((problem: NodeJS.ErrnoException) => {
    const why: Readonly<Record<string, string>> = {
      ENOENT: 'there is no such file',
      EISDIR: 'it is a folder',
      EACCES: 'it may not be read',
    };
    throw new BadCall(`cannot read ${path}: ${why[problem.code ?? ''] ?? problem.message}`);
  });
  if (bytes.length > MAX_DOCUMENT_BYTES)
    throw new BadCall(`cannot read ${path}: it ${tooLarge(bytes.length)}`);
  const decoded = decodeText(bytes);
  if (!decoded.ok) throw new BadCall(`cannot read ${path}: ${decoded.reason}`);
  return decoded.text;
}
