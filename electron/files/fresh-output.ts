import type { BundleFile } from '../../core/bundle.ts';
import type { ListedFile } from '../../core/files/manifest.ts';

/** A folder or a zip that comes into being whole or not at all. */
export interface FreshOutput {
  readonly write: (file: BundleFile) => Promise<ListedFile>;
  /** Moves it into its place; an older one of ours makes way first. */
  readonly finish: () => Promise<void>;
  /** Leaves no trace. */
  readonly discard: () => Promise<void>;
}
