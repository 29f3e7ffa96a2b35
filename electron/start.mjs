// Starts the desktop program where Electron's binary is here or can be fetched; elsewhere says so plainly.
import { spawn, spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';

const ROOT = resolve(import.meta.dirname, '..');
const load = createRequire(import.meta.url);
const { version } = load('electron/package.json');

// Electron's own installer: does nothing if the binary is here, else fetches and checks it.
const installer = join(load.resolve('electron/package.json'), '../install.js');
const installed = spawnSync(process.execPath, [installer], { stdio: ['ignore', 'inherit', 'pipe'] });
if (installed.status !== 0) {
  const [why = ''] = String(installed.stderr).trim().split('\n');
  console.error(
    `The desktop program needs the binary of Electron ${version}, which is not here and cannot be fetched.`,
  );
  if (why !== '') console.error(`  ${why}`);
  console.error('The same program runs in a browser:\n  npm run browser');
  process.exit(1);
}

for (const script of ['build:renderer', 'build:main']) {
  const built = spawnSync('npm', ['run', '-s', script], {
    cwd: ROOT,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (built.status !== 0) process.exit(1);
}

const program = spawn(load('electron'), [ROOT, ...process.argv.slice(2)], { stdio: 'inherit' });
program.on('close', (code) => process.exit(code ?? 1));
