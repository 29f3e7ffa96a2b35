import packageJson from '../../package.json';
import { readArguments } from './arguments.ts';
import { check } from './check.ts';
import { help } from './help.ts';
import { make } from './make.ts';
import { BadCall, EXIT, type ExitCode, type Output } from './output.ts';

/** Runs one call of the command line and returns its exit code. */
export async function run(words: readonly string[], output: Output): Promise<ExitCode> {
  try {
    const call = readArguments(words);
    if (call.command === 'make') return await make(call, output);
    if (call.command === 'check') return await check(call, output);
    output.out(call.command === 'help' ? help(call.topic) : `${packageJson.version}\n`);
    return EXIT.ok;
  } catch (problem) {
    if (!(problem instanceof BadCall)) throw problem;
    output.err(`overhang: ${problem.message}\nTry: overhang --help\n`);
    return EXIT.badCall;
  }
}
