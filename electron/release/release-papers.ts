import { resolve } from 'node:path';
import type { Plugin, Rolldown } from 'vite';
import packageJson from '../../package.json' with { type: 'json' };
import { refuseLicences } from './licences.ts';
import { noticesText } from './notices-text.ts';
import { packagePath } from './package-path.ts';
import { readPackages } from './read-package.ts';
import { softwareBill } from './software-bill.ts';
import { BILL_FILE, NOTICES_FILE } from './types.ts';

const ROOT = resolve(import.meta.dirname, '../..');

/**
 * Puts the notices and the software bill of a build into its folder. What is told comes from the modules and
 * files that the bundler has put in, so nothing that is shipped can be forgotten. A build with a licence that is
 * not allowed fails.
 */
export function releasePapers(): { readonly papers: Plugin; readonly worker: Plugin } {
  const ids = new Set<string>();
  const collect = (_options: unknown, bundle: Rolldown.OutputBundle): void => {
    for (const file of Object.values(bundle)) {
      const from = file.type === 'chunk' ? Object.keys(file.modules) : file.originalFileNames;
      for (const id of from) ids.add(id);
    }
  };
  return {
    // A worker is a build within the build; the papers of both are one.
    worker: { name: 'release-papers-of-worker', generateBundle: collect },
    papers: {
      name: 'release-papers',
      generateBundle(options, bundle) {
        collect(options, bundle);
        const paths = [...ids].flatMap((id) => packagePath(id) ?? []);
        const packages = readPackages(ROOT, paths);
        refuseLicences(packages);
        this.emitFile({ type: 'asset', fileName: NOTICES_FILE, source: noticesText(ROOT, packages) });
        const bill = softwareBill(packageJson, packages, process.env['SOURCE_DATE_EPOCH']);
        this.emitFile({ type: 'asset', fileName: BILL_FILE, source: bill });
      },
    },
  };
}
