import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import packageJson from '../../package.json' with { type: 'json' };
import { noticesText } from './notices-text.ts';
import { readPackages } from './read-package.ts';
import { PATH_PROPERTY, softwareBill } from './software-bill.ts';
import { BILL_FILE, NOTICES_FILE } from './types.ts';

/** The builds that an installer is made of. */
const BUILDS = ['main', 'preload', 'renderer'] as const;

const BILL = z.object({
  components: z.array(
    z.object({ properties: z.array(z.object({ name: z.literal(PATH_PROPERTY), value: z.string() })) }),
  ),
});

/**
 * Writes the notices and the bill of an installer into `dist/release` of a project: of all its builds, as their
 * own bills tell, and of Electron. `root` has the packages and the lock file. Throws where a build has no bill.
 */
export function writeInstallerPapers(root: string, project: string): void {
  const paths = BUILDS.flatMap((build) => pathsOf(join(project, 'dist', build, BILL_FILE)));
  const packages = readPackages(root, [...paths, 'node_modules/electron']);
  const folder = join(project, 'dist/release');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, NOTICES_FILE), noticesText(root, packages));
  writeFileSync(
    join(folder, BILL_FILE),
    softwareBill(packageJson, packages, process.env['SOURCE_DATE_EPOCH']),
  );
}

function pathsOf(file: string): readonly string[] {
  let text;
  try {
    text = readFileSync(file, 'utf8');
  } catch {
    throw new Error(`${file} is missing. Build first: npm run build:renderer && npm run build:main`);
  }
  return BILL.parse(JSON.parse(text)).components.flatMap(({ properties }) =>
    properties.map(({ value }) => value),
  );
}
