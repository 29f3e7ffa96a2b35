import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { build } from 'vite';

/** Numbers from 0 to 1, the same for the same seed (the constants are those of Numerical Recipes, from memory). */
export function randomOf(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

export interface KilledSaves {
  readonly killed: number;
  /** Kills that left a file half written beside the one that is saved, as its next save clears away. */
  readonly unfinished: number;
  /** Whose last whole version was the one and the other of the two that are saved in turn. */
  readonly versions: readonly [number, number];
  /** Kills after which a file was neither version, or lay beside others than it may. */
  readonly torn: readonly string[];
}

/** Characters of a version; an order of 200 drawers has as many. */
const SIZE = 400_000;

/** Processes that save at the same time, each a file of its own. */
const LANES = ['a', 'b', 'c', 'd'];

/**
 * Kills a process that saves a project over and over, as the desktop does with the version before kept beside it,
 * at random moments, and looks each time at what is there.
 */
export async function killSaves(folder: string, kills: number, random: () => number): Promise<KilledSaves> {
  mkdirSync(folder, { recursive: true });
  const entry = join(folder, 'save-document.mjs');
  const source = join(folder, 'entry.ts');
  const files = (name: string): string => JSON.stringify(resolve('electron/files', name));
  writeFileSync(
    source,
    `export { keepPrevious } from ${files('keep-previous.ts')};\nexport { saveFile } from ${files('save-file.ts')};\n`,
  );
  await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      ssr: source,
      outDir: folder,
      emptyOutDir: false,
      rolldownOptions: { output: { entryFileNames: 'save-document.mjs' } },
    },
  });
  let [killed, unfinished] = [0, 0];
  const versions: [number, number] = [0, 0];
  const torn: string[] = [];
  const lane = async (name: string, count: number): Promise<void> => {
    const place = join(folder, name);
    mkdirSync(place);
    const file = join(place, 'order.overhang');
    const previous = join(place, 'order.previous.overhang');
    for (let round = 0; round < count; round += 1) {
      const child = spawn(process.execPath, ['--input-type=module', '--eval', saver(entry, file)]);
      const ended = once(child, 'exit');
      await once(child.stdout, 'data');
      await wait(random() * 20);
      child.kill('SIGKILL');
      await ended;
      if (child.signalCode === 'SIGKILL') killed += 1;
      const version = versionOf(file);
      if (version === null) torn.push(`${name}, round ${round}: the file`);
      else versions[version] += 1;
      if (existsSync(previous) && versionOf(previous) === null)
        torn.push(`${name}, round ${round}: the previous`);
      const hidden = readdirSync(place).filter((entryName) => entryName.startsWith('.'));
      // What the kill before left was cleared by the saves since: the new version and the old one's second name at most
      // are of this kill.
      if (hidden.length > 2) torn.push(`${name}, round ${round}: ${hidden.length} files beside it`);
      unfinished += hidden.length;
    }
  };
  await Promise.all(
    LANES.map((name, index) => lane(name, Math.floor((kills + LANES.length - 1 - index) / LANES.length))),
  );
  return { killed, unfinished, versions, torn };
}

/** Which of the two versions a file is; null when it is neither. */
function versionOf(file: string): 0 | 1 | null {
  const text = readFileSync(file, 'utf8');
  if (text.length !== SIZE) return null;
  if (/^1+$/.test(text)) return 0;
  return /^2+$/.test(text) ? 1 : null;
}

const saver = (entry: string, file: string): string => `
  import { keepPrevious, saveFile } from ${JSON.stringify(entry)};
  const turns = ['1', '2'].map((sign) => Buffer.alloc(${SIZE}, sign));
  for (let turn = 0; ; turn += 1) {
    await keepPrevious(${JSON.stringify(file)}, () => saveFile(${JSON.stringify(file)}, turns[turn % 2]));
    if (turn === 1) process.stdout.write('saved');
  }`;
