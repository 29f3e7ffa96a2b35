/** Who publishes the installers, as a Debian package must say: its `Homepage` and `Maintainer`. */
export interface Publisher {
  readonly homepage: string;
  /** `Name <address>`. */
  readonly maintainer: string;
  /** What of it nobody has given yet, and how to give it. */
  readonly missing: readonly string[];
}

/**
 * What whoever makes a release must set: `homepage` and `author` (with name and email) in package.json, or the
 * two variables of the environment, which come first. Until then these stand in, of a domain that cannot exist
 * (RFC 2606), so that everything but a deb can be built.
 */
const PLACEHOLDERS = {
  homepage: 'https://overhang.invalid/',
  maintainer: 'the Overhang developers <overhang@overhang.invalid>',
} as const;

/** Who publishes, from a package.json and an environment; an empty variable counts as none. */
export function publisherOf(
  packageJson: object,
  environment: Readonly<Record<string, string | undefined>>,
): Publisher {
  const homepage = environment['OVERHANG_HOMEPAGE'] || textOf(packageJson, 'homepage');
  const maintainer = environment['OVERHANG_MAINTAINER'] || authorOf(packageJson);
  return {
    homepage: homepage || PLACEHOLDERS.homepage,
    maintainer: maintainer || PLACEHOLDERS.maintainer,
    missing: [
      ...(isAddress(homepage)
        ? []
        : ['OVERHANG_HOMEPAGE (or "homepage" in package.json): an address that begins with https://']),
      ...(isMaintainer(maintainer)
        ? []
        : ['OVERHANG_MAINTAINER (or "author" with name and email in package.json): Name <mail@address>']),
    ],
  };
}

/** Throws when a deb is to be built and its publisher is not known. */
export function refusePlaceholders(
  { missing }: Publisher,
  targets: readonly { readonly name: string }[],
): void {
  if (missing.length === 0 || !targets.some(({ name }) => name === 'deb')) return;
  throw new Error(`A deb names its publisher. Set ${missing.join('; and ')}. Nothing was packed.`);
}

function textOf(from: object, field: string): string {
  const value: unknown = Reflect.get(from, field);
  return typeof value === 'string' ? value : '';
}

/** npm takes an author as one text or as a record. */
function authorOf(packageJson: object): string {
  const author: unknown = Reflect.get(packageJson, 'author');
  if (typeof author !== 'object' || author === null) return textOf(packageJson, 'author');
  const [name, email] = [textOf(author, 'name'), textOf(author, 'email')];
  return name === '' || email === '' ? '' : `${name} <${email}>`;
}

/** `.invalid` is nobody's. */
const isAddress = (text: string): boolean => /^https?:\/\/[^\s/]+\.[^\s/]+/.test(text) && !isInvalid(text);

const isMaintainer = (text: string): boolean =>
  /^[^<>]+ <[^\s<>@]+@[^\s<>@]+>$/.test(text) && !isInvalid(text);

const isInvalid = (text: string): boolean => /\.invalid(?![\w.-])/.test(text);
