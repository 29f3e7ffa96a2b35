/** An npm package of which a build holds something. */
export interface BundledPackage {
  /** Its folder from the project's root, which is also its key in the lock file: `node_modules/zod`. */
  readonly path: string;
  readonly name: string;
  readonly version: string;
  /** SPDX expression: `MIT`, `MIT AND OFL-1.1`. */
  readonly licence: string;
  /** From the lock file, as Subresource Integrity writes it: `sha512-` and base64. */
  readonly integrity: string;
  /** Each notice that goes with it, whole. */
  readonly notices: readonly string[];
  /** What was compiled into it, by the package's own makers. */
  readonly holds: readonly HeldLibrary[];
}

/** A library inside a package's own binary, where no file of the package tells of it. */
export interface HeldLibrary {
  readonly name: string;
  readonly licence: string;
  /** Years and names, as after `Copyright (c)`. */
  readonly holder: string;
}

/** The names of the papers of a build, in its folder. */
export const NOTICES_FILE = 'THIRD-PARTY-NOTICES.txt';
export const BILL_FILE = 'sbom.cdx.json';
