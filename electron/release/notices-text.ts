import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { licenceTexts } from './licence-texts.ts';
import type { BundledPackage, HeldLibrary } from './types.ts';

const RULE = `\n\n${'-'.repeat(78)}\n\n`;

/** The notices of all packages of a build and of the engraving font, then the texts of licences that lack theirs. */
export function noticesText(root: string, packages: readonly BundledPackage[]): string {
  const sections = packages.map(({ name, version, licence, notices, holds }) =>
    [`${name} ${version} (${licence})`, ...notices, ...holds.map(heldNotice)].join('\n\n'),
  );
  const font = readFileSync(join(root, 'assets/stroke-font/NOTICE.txt'), 'utf8').trim();
  const texts = [...licenceTexts()].map(([name, text]) => `The text of ${name}\n\n${text}`);
  const intro = INTRO + (packages.some(({ name }) => name === 'electron') ? OF_ELECTRON : '');
  return `${[intro, ...sections, font, ...texts].join(RULE)}\n`;
}

const INTRO =
  'Overhang is under the MIT licence. It holds parts of the programs and fonts below, whose notices follow.';

const OF_ELECTRON = [
  ' The notices',
  'of what Electron holds, Chromium and Node.js among them, are in LICENSES.chromium.html, beside the program',
  'or, on macOS, beside this file.',
].join('\n');

const heldNotice = ({ name, licence, holder }: HeldLibrary): string => {
  const text = licenceTexts().has(licence) ? `; the text of ${licence} is at the end` : '';
  return `It holds ${name} (${licence}${text}). Copyright (c) ${holder}.`;
};
