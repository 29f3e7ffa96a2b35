import { homedir } from 'node:os';
import { join } from 'node:path';
import { readPort } from './host-arguments.ts';
import { serve } from './serve.ts';

/** Where a user's programs keep what must outlast them. XDG Base Directory Specification; elsewhere the same. */
const state = process.env['XDG_STATE_HOME'] ?? join(homedir(), '.local', 'state');

try {
  const places = {
    page: join(import.meta.dirname, '../renderer'),
    recovery: join(state, 'overhang', 'browser-recovery'),
  };
  const host = await serve(places, readPort(process.argv.slice(2)));
  process.stdout.write(`Overhang is at ${host.address}\nStop it with Ctrl+C.\n`);
  const stop = (): void => {
    void host.stop().then(() => process.exit(0));
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
} catch (problem) {
  process.stderr.write(`overhang: ${problem instanceof Error ? problem.message : String(problem)}\n`);
  process.exitCode = 2;
}
