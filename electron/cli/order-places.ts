import { basename, extname, join } from 'node:path';
import { distinctNames, safeName } from '../../core/files/file-name.ts';
import { parseProject } from '../../core/project/parse-project.ts';
import { isProject, readTextFile } from './load.ts';
import type { Call } from './arguments.ts';

/** Where the files of the only order of a call go: `--out`, for a zip with its ending. */
export const placeOf = ({ out, zip }: Call): string =>
  zip && extname(out).toLowerCase() !== '.zip' ? `${out}.zip` : out;

/**
 * The calls that make the orders of one call, one each, in its order. Each has a place in `--out` that is named
 * after its order, whatever the number of jobs; an order that cannot be read has the name of its file.
 */
export async function* callsOf(call: Call): AsyncGenerator<Call> {
  const distinct = distinctNames();
  for (const order of call.orders) {
    const name = distinct(safeName(await nameOf(order)));
    yield { ...call, order, orders: [order], out: join(call.out, call.zip ? `${name}.zip` : name) };
  }
}

async function nameOf(path: string): Promise<string> {
  const usual = basename(path, extname(path));
  if (!isProject(path)) return usual;
  try {
    return parseProject(JSON.parse(await readTextFile(path)), basename(path)).value?.order.name ?? usual;
  } catch {
    // What is wrong with it is told when it is made.
    return usual;
  }
}
