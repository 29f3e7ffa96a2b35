import { parseArgs } from 'node:util';

/** Reads `--port 8080`; 0 or none takes any port that is free. */
export function readPort(words: readonly string[]): number {
  const { values } = parseArgs({ args: [...words], options: { port: { type: 'string' } } });
  const port = values.port ?? '0';
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535)
    throw new RangeError(`--port is "${port}"; write 0 to 65535`);
  return Number(port);
}
