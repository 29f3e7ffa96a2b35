import type { BundleFile, BundleStep } from '../../core/bundle.ts';

/** The files of all steps of a bundle. */
export async function bundleFiles(steps: AsyncIterable<BundleStep>): Promise<readonly BundleFile[]> {
  const files: BundleFile[] = [];
  for await (const step of steps) files.push(...step.files);
  return files;
}

/** What a file that must be text holds. */
export function textOf(file: Pick<BundleFile, 'content'> | undefined): string {
  if (file === undefined) return '';
  if (typeof file.content !== 'string') throw new TypeError('the file is no text');
  return file.content;
}
