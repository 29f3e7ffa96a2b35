/** An element of an SVG file as the checker reads it; text between elements is kept apart. */
export interface SvgElement {
  readonly name: string;
  /** 0 for the root. */
  readonly depth: number;
  readonly parent: SvgElement | null;
  readonly attributes: Readonly<Record<string, string>>;
}

export interface SvgTree {
  readonly elements: readonly SvgElement[];
  /** What the text breaks, one sentence each. */
  readonly faults: readonly string[];
}

const TOKEN = /<\?[^>]*\?>|<(\/?)([\w:-]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)|(<)/g;
const ATTRIBUTE = /([\w:-]+)="([^"<]*)"/g;

/** Reads the plain XML that the writer writes, without entities, comments and declarations but the first. */
export function readSvg(text: string): SvgTree {
  const elements: SvgElement[] = [];
  const faults: string[] = [];
  const open: SvgElement[] = [];
  for (const [token, slash, name, attributes, selfClosing, words, stray] of text.matchAll(TOKEN)) {
    if (stray !== undefined) faults.push('a “<” that begins no element');
    else if (words !== undefined && words.trim() !== '') faults.push(`the words “${words.trim()}”`);
    if (name === undefined) continue;
    if (slash === '/') {
      if (open.pop()?.name !== name) faults.push(`${token} closes what is not open`);
      continue;
    }
    const pairs = [...(attributes ?? '').matchAll(ATTRIBUTE)].map(
      ([, key, value]) => [key ?? '', value ?? ''] as const,
    );
    const element = {
      name,
      depth: open.length,
      parent: open.at(-1) ?? null,
      attributes: Object.fromEntries(pairs),
    };
    elements.push(element);
    if (selfClosing !== '/') open.push(element);
  }
  if (open.length > 0) faults.push(`${open.map((element) => element.name).join(', ')} not closed`);
  return { elements, faults };
}
