import { open } from 'node:fs/promises';
import { codeOf } from './refusal.ts';

/** Makes the names in a folder outlast a power cut. Windows cannot open a folder; there it does nothing. */
export async function syncFolder(path: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(path, 'r');
  try {
    await handle.sync();
  } catch (problem) {
    // Some network and overlay file systems refuse; the file itself is written all the same.
    if (!['EINVAL', 'ENOTSUP'].includes(codeOf(problem))) throw problem;
  } finally {
    await handle.close();
  }
}
