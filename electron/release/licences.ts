import type { BundledPackage } from './types.ts';

/**
 * The licences that a build may hold, by their SPDX names: those that let a program be given away under any
 * licence as long as their notice goes with it.
 */
export const ALLOWED: readonly string[] = [
  '0BSD',
  'Apache-2.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'ISC',
  'MIT',
  'OFL-1.1',
  'Zlib',
];

/** True if an SPDX expression is met by allowed licences. Anything but names with AND and OR is refused. */
export function isAllowed(expression: string): boolean {
  const bare = /^\([^()]*\)$/.test(expression) ? expression.slice(1, -1) : expression;
  // In SPDX, AND binds closer than OR.
  return bare.split(' OR ').some((some) => some.split(' AND ').every((name) => ALLOWED.includes(name)));
}

/** Throws with every package whose licence is not allowed. */
export function refuseLicences(packages: readonly BundledPackage[]): void {
  const strangers = packages.flatMap(({ path, licence, holds }) =>
    [licence, ...holds.map((held) => held.licence)]
      .filter((expression) => !isAllowed(expression))
      .map((expression) => `${path} (${expression})`),
  );
  if (strangers.length === 0) return;
  throw new Error(
    `A build holds what it may not: ${strangers.join(', ')}. Allowed are ${ALLOWED.join(', ')}: electron/release/licences.ts.`,
  );
}
