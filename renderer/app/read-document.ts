import type { Finding } from '../../core/findings/finding.ts';
import { readJson } from '../../core/order/read-json.ts';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { parseDraft } from '../../core/project/parse-draft.ts';
import { isOrderFile } from '../../shared/document-kinds.ts';

export interface ReadDocument {
  /** Null when there is nothing that could be worked on. */
  readonly draft: Draft | null;
  readonly findings: readonly Finding[];
}

/** Reads a project, or an order to the standard and on the machine of the draft that is open. */
export function readDocument(text: string, file: string, open: Draft): ReadDocument {
  const { standard, machine, registration, unit } = open;
  if (isOrderFile(file)) {
    const name = file.replace(/\.[^.]*$/, '');
    const { value, findings } = draftFromCsv(text, { file, name, unit, standard, machine, registration });
    return { draft: value.rows.length === 0 && findings.length > 0 ? null : value, findings };
  }
  const json = readJson(text, file);
  if (json.findings.length > 0) return { draft: null, findings: json.findings };
  const { value, findings } = parseDraft(json.value, file, { machine, registration });
  return { draft: value, findings };
}
