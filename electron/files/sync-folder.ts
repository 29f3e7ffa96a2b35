import { open } from 'node:fs/promises';

/**
 * Makes the names in a folder outlast a power cut, where the system lets it: Windows and some network disks do not,
 * nor can a folder be opened that may be written but not read. What was renamed stands in its place all the same, so
 * this never fails.
 */
export async function syncFolder(path: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(path, 'r').catch(() => null);
  try {
    await handle?.sync();
  } catch {
    // See above.
  } finally {
    await handle?.close().catch(() => undefined);
  }
}
