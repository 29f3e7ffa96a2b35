import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const FOLDER = join(import.meta.dirname, 'texts');

/** The licences whose own texts we have, by their SPDX names, for libraries that name one without its text. */
export const licenceTexts = (): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(FOLDER)
      .sort()
      .map((file) => [file.replace(/\.txt$/, ''), readFileSync(join(FOLDER, file), 'utf8').trim()]),
  );

/**
 * What stands in for the notice of a package that names its licence and has no file of it. Throws for a licence
 * whose text is not here.
 */
export function withoutText(licence: string, path: string, author: string | undefined): string {
  if (!licenceTexts().has(licence)) {
    throw new Error(
      `${path} has no file of its licence ${licence}; put its text into electron/release/texts.`,
    );
  }
  const holder = author === undefined ? 'its authors' : author.replace(/ *[<(].*$/, '');
  return `Copyright (c) ${holder}. The package has no licence file; the text of ${licence} is at the end.`;
}
