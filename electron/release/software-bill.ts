import { createHash } from 'node:crypto';
import type { BundledPackage, HeldLibrary } from './types.ts';

/** The program itself, as its package.json says. */
export interface Program {
  readonly name: string;
  readonly version: string;
  readonly license: string;
}

/**
 * The software bill of materials of a build, in CycloneDX 1.5: what it holds of npm packages, with what was
 * compiled into them. The same packages give the same text. `epoch` is the environment's SOURCE_DATE_EPOCH, in
 * seconds; without it the bill has no time. Throws if it is no whole number.
 */
export function softwareBill(
  program: Program,
  packages: readonly BundledPackage[],
  epoch: string | undefined,
): string {
  const self = `pkg:npm/${program.name}@${program.version}`;
  const components = packages.map(component);
  const bill = {
    metadata: {
      ...(epoch === undefined || epoch === '' ? {} : { timestamp: timeOf(epoch) }),
      component: {
        type: 'application',
        'bom-ref': self,
        name: program.name,
        version: program.version,
        licenses: licences(program.license),
        purl: self,
      },
    },
    components,
    dependencies: [
      { ref: self, dependsOn: packages.map(packageUrl) },
      ...packages.map((each) => ({ ref: packageUrl(each) })),
    ],
  };
  const head = {
    $schema: 'http://cyclonedx.org/schema/bom-1.5.schema.json',
    bomFormat: 'CycloneDX',
    specVersion: '1.5',
    serialNumber: `urn:uuid:${uuidOf(JSON.stringify(bill))}`,
    version: 1,
  };
  return `${JSON.stringify({ ...head, ...bill }, null, 2)}\n`;
}

function component(each: BundledPackage) {
  const purl = packageUrl(each);
  return {
    type: 'library',
    'bom-ref': purl,
    name: each.name,
    version: each.version,
    hashes: [hashOf(each.integrity)],
    licenses: licences(each.licence),
    purl,
    properties: [{ name: PATH_PROPERTY, value: each.path }],
    ...(each.holds.length === 0 ? {} : { components: each.holds.map((held) => inner(purl, held)) }),
  };
}

const inner = (purl: string, { name, licence, holder }: HeldLibrary) => ({
  type: 'library',
  'bom-ref': `${purl}#${name}`,
  author: holder,
  name,
  licenses: licences(licence),
});

/** Where npm says that a package is; of the published list of property names. From memory. */
export const PATH_PROPERTY = 'cdx:npm:package:path';

/** The package URL of an npm package; the `@` of a scope is written `%40`. From memory. */
const packageUrl = ({ name, version }: BundledPackage): string =>
  `pkg:npm/${name.replace(/^@/, '%40')}@${version}`;

const licences = (expression: string) =>
  /[ (]/.test(expression) ? [{ expression }] : [{ license: { id: expression } }];

/** `sha512-` and base64 becomes `SHA-512` and hexadecimal. */
function hashOf(integrity: string) {
  const [, bits = '', base64 = ''] = /^sha(256|384|512)-([A-Za-z0-9+/]+=*)$/.exec(integrity) ?? [];
  if (bits === '')
    throw new Error(`${integrity} is no hash that a bill may have; it takes SHA-256, -384, -512.`);
  return { alg: `SHA-${bits}`, content: Buffer.from(base64, 'base64').toString('hex') };
}

function timeOf(epoch: string): string {
  if (!/^\d{1,11}$/.test(epoch)) {
    throw new Error(`SOURCE_DATE_EPOCH is "${epoch}"; write a whole number of seconds since 1970.`);
  }
  return new Date(Number(epoch) * 1000).toISOString();
}

/** An identifier that depends on the contents alone, in the form of version 5 of RFC 9562. */
function uuidOf(contents: string): string {
  const bytes = createHash('sha1').update(contents).digest().subarray(0, 16);
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x50;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  return bytes.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
