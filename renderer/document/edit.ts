import type { Finding } from '../../core/findings/finding.ts';
import { fieldOf, textAt, withValue, type Json, type Path } from './json.ts';

/** A document in work: what it says, what is wrong where, and how to change it. */
export interface DocumentEdit {
  readonly document: Json;
  readonly text: (path: Path) => string;
  /** Why the text at a path is refused; null when it is not. */
  readonly fault: (path: Path) => string | null;
  /** Another value at a path; undefined takes the field out. */
  readonly set: (path: Path, value: Json | undefined) => void;
  readonly replace: (document: Json) => void;
}

/** An edit of a document with what its parser found. */
export const documentEdit = (
  document: Json,
  findings: readonly Finding[],
  replace: (document: Json) => void,
): DocumentEdit => ({
  document,
  text: (path) => textAt(document, path),
  fault(path) {
    const field = fieldOf(document, path);
    const found = findings.find(({ at }) => at.field === field);
    return found === undefined ? null : reasonOf(found);
  },
  set: (path, value) => replace(withValue(document, path, value)),
  replace,
});

/** The reason of a finding without the path of its field, which is where the reason is shown. */
const reasonOf = ({ message, at }: Finding): string => {
  const start = `Field ${at.field ?? ''}: `;
  return message.startsWith(start) ? message.slice(start.length) : message;
};
