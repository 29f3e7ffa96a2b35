import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { isDocumentName } from '../../shared/document-kinds.ts';

/**
 * The documents among the words that the program was started with, as full paths. The first word is the
 * program; options are none of them, nor is the program's own folder in development. File managers may name
 * a file by its address: `file:///home/a.overhang`.
 */
export const documentArguments = (argv: readonly string[], folder: string): readonly string[] =>
  argv
    .slice(1)
    .filter((word) => !word.startsWith('-'))
    .map(pathOf)
    .filter(isDocumentName)
    .map((path) => resolve(folder, path));

function pathOf(word: string): string {
  if (!/^[a-z]+:\/\//i.test(word)) return word;
  try {
    // Throws for any address that is no file of this machine.
    return fileURLToPath(word);
  } catch {
    return '';
  }
}
