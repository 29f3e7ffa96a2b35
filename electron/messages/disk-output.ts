import { join } from 'node:path';
import { safeName } from '../../core/files/file-name.ts';
import { freshFolder } from '../files/fresh-folder.ts';
import { reasonOf, Refusal } from '../files/refusal.ts';
import type { Dialogs } from './disk-documents.ts';
import type { Output } from './ports.ts';

/** Folders of cut files on the disk, each in the folder that the user chose. `show` is the system's file manager. */
export const diskOutput = (dialogs: Dialogs, show: (path: string) => void): Output => ({
  async begin(suggestedName) {
    const parent = await dialogs.outputFolder();
    if (parent === null) return null;
    const place = join(parent, safeName(suggestedName));
    const folder = await freshFolder(place).catch((problem: unknown) => cannotWrite(place, problem));
    return {
      async write(path, content) {
        const written = folder.write({ path, content });
        const { size, sha256 } = await written.catch((problem: unknown) => cannotWrite(path, problem));
        return { size, sha256 };
      },
      async finish() {
        await folder.finish();
        return { place };
      },
      discard: folder.discard,
    };
  },
  async show(place) {
    // Shown, not opened: opening could start something.
    show(join(place, 'manifest.json'));
  },
});

function cannotWrite(what: string, problem: unknown): never {
  throw problem instanceof Refusal ? problem : new Refusal(`${what} cannot be written: ${reasonOf(problem)}`);
}
