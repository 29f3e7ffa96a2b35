import { isRecord } from '../collections/is-record.ts';
import type { Finding } from '../findings/finding.ts';
import { error, warning } from '../findings/make.ts';
import { ORDER_COLUMNS } from '../order/columns.ts';
import { quoteText, shownText } from '../order/quote-text.ts';
import { suggest } from '../order/suggest.ts';

/** Fields of a document that this program does not read, as they were written. */
export type UnreadFields = Readonly<Record<string, unknown>>;

/** Such fields of a project file and of its order; those of a drawer stay with its row. */
export interface Unread {
  readonly document?: UnreadFields;
  readonly order?: UnreadFields;
}

/** A project's document in two: what is read, and what is only kept. */
export interface SplitDocument {
  readonly read: unknown;
  readonly unread: Unread;
  /** By the index of the drawer. */
  readonly unreadOfDrawers: ReadonlyMap<number, UnreadFields>;
  /** A warning for each name that is only kept, an error for each that is nearly one of ours. */
  readonly findings: readonly Finding[];
}

const FIELDS = {
  document: ['format', 'version', 'order', 'standard', 'machine', 'jigs', 'sharing'],
  order: ['name', 'date', 'unit', 'drawers'],
  drawer: ['row', ...ORDER_COLUMNS],
} as const;

/** Names of one place that are told; more are kept all the same. */
const MOST_TOLD = 20;

/**
 * Takes out of a project's document the fields that this program does not know, which another program or a later
 * version may have written. They are no error, are told once each, and are kept for when the file is saved. A name
 * that is nearly one of ours is a slip, which would leave a value out of the jigs, and is refused. The standard
 * and the machine are left whole: their own readers refuse what they do not know.
 */
export function splitUnread(json: unknown, file: string): SplitDocument {
  const document = cut(json, FIELDS.document);
  const order = cut(document.known['order'], FIELDS.order);
  const list = order.known['drawers'];
  const drawers = Array.isArray(list) ? list.map((drawer: unknown) => cut(drawer, FIELDS.drawer)) : [];
  const unreadOfDrawers = new Map<number, UnreadFields>();
  const seen = new Map<string, number>();
  for (const [index, { unknown }] of drawers.entries()) {
    const names = Object.keys(unknown);
    if (names.length > 0) unreadOfDrawers.set(index, unknown);
    for (const name of names) if (!seen.has(name)) seen.set(name, index);
  }
  const told = (path: string, names: readonly string[], known: readonly string[]): readonly Finding[] =>
    names.slice(0, MOST_TOLD).map((name) => tell(path, name, known, file));
  const findings = [
    ...told('', Object.keys(document.unknown), FIELDS.document),
    ...told('order.', Object.keys(order.unknown), FIELDS.order),
    ...[...seen]
      .slice(0, MOST_TOLD)
      .map(([name, index]) => tell(`order.drawers.${index}.`, name, FIELDS.drawer, file)),
  ];
  const read = isRecord(json)
    ? {
        ...document.known,
        ...(isRecord(document.known['order'])
          ? {
              order: {
                ...order.known,
                ...(Array.isArray(list)
                  ? {
                      drawers: list.map((one: unknown, index) =>
                        isRecord(one) ? drawers[index]?.known : one,
                      ),
                    }
                  : {}),
              },
            }
          : {}),
      }
    : json;
  return {
    read,
    unread: { ...named('document', document.unknown), ...named('order', order.unknown) },
    unreadOfDrawers,
    findings,
  };
}

const named = (where: keyof Unread, fields: UnreadFields): Unread =>
  Object.keys(fields).length === 0 ? {} : { [where]: fields };

function cut(
  value: unknown,
  names: readonly string[],
): { readonly known: UnreadFields; readonly unknown: UnreadFields } {
  const fields = isRecord(value) ? Object.entries(value) : [];
  const isKnown = ([name]: readonly [string, unknown]): boolean => names.includes(name);
  // `fromEntries` makes own fields of all names, `__proto__` among them.
  return {
    known: Object.fromEntries(fields.filter(isKnown)),
    unknown: Object.fromEntries(fields.filter((field) => !isKnown(field))),
  };
}

function tell(path: string, name: string, known: readonly string[], file: string): Finding {
  const field = `${path}${shownText(name)}`;
  const near = suggest(name, known);
  if (near === undefined) {
    const message = `Field ${field}: this program does not read ${quoteText(name)}; it stays in the file as it is.`;
    return warning('project/unread', message, { file, field });
  }
  const message = `Field ${field}: there is no ${quoteText(name)}; did you mean ${near}? The fields here are ${known.join(', ')}.`;
  return error('project/field', message, { file, field });
}
