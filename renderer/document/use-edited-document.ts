import { useDeferredValue, useMemo, useState } from 'react';
import { sameData } from '../../core/collections/same-data.ts';
import type { Finding, Outcome } from '../../core/findings/finding.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { jsonOf } from '../../shared/json-of.ts';
import { documentEdit, type DocumentEdit } from './edit.ts';
import type { OpenText, SaveText } from './files.ts';
import type { Json } from './json.ts';

/** A document in work: its JSON in words of the unit that is shown. */
export interface EditedDocument {
  readonly document: Json;
  readonly shown: LengthUnit;
}

/** How documents of one kind are edited. */
export interface DocumentKind<Value extends object, Edited extends EditedDocument> {
  readonly begin: (value: Value, shown: LengthUnit) => Edited;
  /** The same work in words of another unit. */
  readonly showIn: (edited: Edited, shown: LengthUnit) => Edited;
  readonly read: (edited: Edited) => {
    readonly value: Value | null;
    readonly findings: readonly Finding[];
  };
  /** Reads a file of the kind. */
  readonly parse: (json: unknown, file: string) => Outcome<Value | null>;
  readonly write: (value: Value) => string;
  /** Work that is neither applied nor dropped: it is gone on with when its page is shown again. */
  readonly kept: WeakMap<Value, Edited>;
}

interface EditedOf<Value extends object, Edited extends EditedDocument> {
  readonly kind: DocumentKind<Value, Edited>;
  /** What is in force, and is edited. */
  readonly own: Value;
  readonly unit: LengthUnit;
  readonly onApply: (value: Value) => void;
  /** Absent where there are no files to open or save. */
  readonly onOpen?: OpenText | undefined;
  readonly onSave?: SaveText | undefined;
}

/** A document that is edited aside from the order until it is applied. */
export interface DocumentWork<Value, Edited extends EditedDocument> {
  readonly edited: Edited;
  readonly edit: DocumentEdit;
  readonly setEdited: (edited: Edited) => void;
  /** What to try on the order, after a pause in the typing; null while it is faulty or the same. */
  readonly tried: Value | null;
  readonly isChanged: boolean;
  /** Whole sentences. */
  readonly faults: readonly string[];
  readonly start: (from: Value) => void;
  readonly apply: () => void;
  readonly drop: () => void;
  readonly open?: () => void;
  readonly save?: () => void;
}

/** Edits a document aside from the order, and reads it at every stroke. */
export function useEditedDocument<Value extends { readonly name: string }, Edited extends EditedDocument>(
  given: EditedOf<Value, Edited>,
): DocumentWork<Value, Edited> {
  const { kind, own, unit, onApply, onOpen, onSave } = given;
  const [work, showWork] = useState(() => kind.kept.get(own) ?? null);
  const setWork = (next: Edited | null): void => {
    if (next === null) kind.kept.delete(own);
    else kind.kept.set(own, next);
    showWork(next);
  };
  const [refused, setRefused] = useState<readonly string[]>([]);
  const edited = useMemo(
    () => (work === null ? kind.begin(own, unit) : kind.showIn(work, unit)),
    [kind, work, own, unit],
  );
  const { value, findings } = useMemo(() => kind.read(edited), [kind, edited]);
  const isChanged = value === null || !sameData(value, own);
  const tried = useDeferredValue(isChanged ? value : null);

  const end = (): void => {
    setRefused([]);
    setWork(null);
  };
  const start = (from: Value): void => {
    setRefused([]);
    setWork(kind.begin(from, unit));
  };
  const open = async (): Promise<void> => {
    const file = await onOpen?.();
    if (file === undefined || file === null) return;
    const read = kind.parse(jsonOf(file.text), file.name);
    if (read.value === null) setRefused(read.findings.map(({ message }) => message));
    else start(read.value);
  };
  return {
    edited,
    edit: documentEdit(edited.document, findings, (document) => setWork({ ...edited, document })),
    setEdited: setWork,
    tried,
    isChanged,
    faults: refused.length > 0 ? refused : findings.map(({ message }) => message),
    start,
    apply() {
      if (value === null) return;
      onApply(value);
      end();
    },
    drop: end,
    ...(onOpen === undefined ? {} : { open: () => void open() }),
    ...(onSave === undefined || value === null
      ? {}
      : { save: () => onSave(`${value.name}.json`, kind.write(value)) }),
  };
}
