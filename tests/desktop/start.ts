import { join, resolve } from 'node:path';
import type { ElectronApplication, Page } from 'playwright-core';
import { z } from 'zod';

const ROOT = resolve(import.meta.dirname, '../..');

/** Builds the desktop program as it is shipped, but for the fuses, which would keep the test out. */
export async function buildDesktop(): Promise<void> {
  // Loaded late, here and below: where the suite is skipped it costs nothing.
  const { build } = await import('vite');
  for (const part of ['renderer', 'main', 'preload']) {
    await build({ configFile: join(ROOT, `vite.${part}.config.ts`), logLevel: 'error' });
  }
}

export interface Desktop {
  readonly program: ElectronApplication;
  readonly page: Page;
  /** Sends a message of the contract from within the page. */
  readonly send: (channel: string, request: unknown) => Promise<unknown>;
}

/** Starts the built program with a data folder of its own. Files are opened as the system would have it. */
export async function startDesktop(
  executablePath: string,
  data: string,
  files: readonly string[] = [],
): Promise<Desktop> {
  // Chromium's sandbox refuses to run as root, as in containers.
  const root = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const { _electron } = await import('playwright-core');
  const program = await _electron.launch({
    executablePath,
    args: [ROOT, `--user-data-dir=${data}`, ...root, ...files],
    cwd: ROOT,
  });
  const page = await program.firstWindow();
  await page.waitForLoadState('load');
  return {
    program,
    page,
    send: (channel, request) =>
      page.evaluate(`window.overhang.send(${JSON.stringify(channel)}, ${JSON.stringify(request)})`),
  };
}

/** Has the system's dialogs answer with these paths, since nobody sits before them. */
export async function answerDialogs(
  program: ElectronApplication,
  answers: { readonly open?: string; readonly save?: string; readonly box?: number },
): Promise<void> {
  await program.evaluate(({ dialog }, { open, save, box }) => {
    dialog.showOpenDialog = async () => ({
      canceled: open === undefined,
      filePaths: open === undefined ? [] : [open],
    });
    dialog.showSaveDialog = async () => ({ canceled: save === undefined, filePath: save ?? '' });
    dialog.showMessageBox = async () => ({ response: box ?? 2, checkboxChecked: false });
  }, answers);
}

/** The job of a folder of cut files that was begun. */
export const jobOf = (begun: unknown): string => z.object({ job: z.string() }).parse(begun).job;
