import type { Draft } from '../../core/project/draft.ts';
import { isOrderFile, PROJECT_EXTENSIONS } from '../../shared/document-kinds.ts';
import type { Reply } from '../../shared/contract/messages.ts';
import { markSaved, openDraft, recoverDraft, settle } from '../store/changes.ts';
import { demoDraft, emptyDraft } from '../store/demo-draft.ts';
import { recorded, type ProgramAction } from '../store/program-actions.ts';
import { isUnsaved } from '../store/readings.ts';
import { useProgram } from '../store/use-program.ts';
import { send } from '../transport/send.ts';
import { openTabs, ownTab } from '../transport/tab.ts';
import { draftWriter, NO_WRITER } from './draft-writer.ts';
import { useNotices } from './notices.ts';
import { ask } from './Question.tsx';
import type { ReadDocument } from './read-document.ts';
import { saveAsking, type HowToSave } from './save-asking.ts';

const tell = (text: string): void => useNotices.getState().tell(text);

/** Takes what is being typed into the draft: a field does so when it is left, and is gone on with afterwards. */
function takeTyped(): void {
  const { activeElement: field } = document;
  if (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) {
    field.blur();
    field.focus();
  }
  settle();
}

/** Whether unsaved work may go: it is saved, or given up, or there is none. */
async function mayLeave(): Promise<boolean> {
  takeTyped();
  const state = useProgram.getState();
  if (!isUnsaved(state)) return true;
  const chosen = await ask('Unsaved work', `"${state.draft.name}" has changes that are not saved.`, [
    'Save',
    'Do not save',
    'Keep working',
  ]);
  if (chosen === 'Save') return save(false);
  return chosen === 'Do not save';
}

/** Saves the draft as a project file; true when it is saved. */
export async function save(askWhere: boolean): Promise<boolean> {
  takeTyped();
  const { draft, file } = useProgram.getState();
  const [tab, writeDraft] = await Promise.all([ownTab(), draftWriter().catch(() => null)]);
  if (writeDraft === null) {
    tell(`Not saved: ${NO_WRITER}`);
    return false;
  }
  const saveOnce = (how: HowToSave): Promise<Reply<'document.save'>> =>
    send('document.save', {
      tab,
      handle: how.askWhere ? null : file.handle,
      suggestedName: file.name ?? `${draft.name}.${PROJECT_EXTENSIONS[0]}`,
      text: writeDraft(draft),
      replaceChanged: how.replaceChanged,
    });
  const reply = await saveAsking(saveOnce, ask, askWhere);
  if (!reply.ok) tell(`Not saved: ${reply.reason}`);
  if (!reply.ok || reply.cancelled) return false;
  markSaved(draft, { name: reply.name, handle: reply.handle });
  tell(`Saved ${reply.name}`);
  return true;
}

/** Reads a document; what that takes is loaded when the first one is opened. */
async function readText(text: string, file: string): Promise<ReadDocument> {
  const { readDocument } = await import('./read-document.ts');
  return readDocument(text, file, useProgram.getState().draft);
}

/** Opens what the platform has read, or tells why it cannot be. */
async function openReply(reply: Reply<'document.open'>): Promise<void> {
  if (!reply.ok) return tell(`Not opened: ${reply.reason}`);
  if (reply.cancelled) return;
  const { name, handle, text } = reply;
  const read = await readText(text, name);
  const errors = read.findings.filter(({ severity }) => severity === 'error');
  if (read.draft === null) {
    const [first] = errors;
    const more = errors.length > 1 ? ` And ${errors.length - 1} more.` : '';
    return tell(`Not opened: ${name}: ${first?.message ?? 'it is no order and no project'}${more}`);
  }
  const isProject = !isOrderFile(name);
  // A CSV file is read, not written to: saving asks for a project file's place.
  openDraft(read.draft, isProject ? { name, handle } : { name: null, handle: null });
  const told = read.findings.map(({ message }) => message);
  const shown = [
    ...told.slice(0, MOST_TOLD),
    ...(told.length > MOST_TOLD ? [`And ${told.length - MOST_TOLD} more.`] : []),
  ];
  tell([`${isProject ? 'Opened' : 'Read the rows of'} ${name}.`, ...shown].join(' '));
}

/** Findings that one notice can hold. */
const MOST_TOLD = 5;

/** Asks for a document and opens it; with a handle, that one. */
export async function open(source: string | null): Promise<void> {
  if (await mayLeave()) await openReply(await send('document.open', { source }));
}

/** Opens what was dropped on the window. */
export async function openAfterLeaving(read: () => Promise<Reply<'document.open'>>): Promise<void> {
  if (await mayLeave()) await openReply(await read());
}

async function replaceBy(draft: Draft, words: string): Promise<void> {
  if (!(await mayLeave())) return;
  openDraft(draft, { name: null, handle: null });
  tell(words);
}

/** Asks for work that an earlier run, or this tab before it was loaded again, left unsaved. */
export async function askForKept(): Promise<Reply<'document.kept'>> {
  const tab = await ownTab();
  const open = await openTabs();
  return send('document.kept', { tab, open });
}

/** Such work, brought back if its owner wants it. */
export async function offerKept(kept: Promise<Reply<'document.kept'>>): Promise<void> {
  const { document } = await kept;
  if (document === null) return;
  const { draft, findings } = await readText(document.text, document.name);
  if (draft === null) {
    return tell(`Work from an earlier time cannot be brought back: ${findings[0]?.message ?? document.name}`);
  }
  const chosen = await ask(
    'Work from an earlier time',
    `"${draft.name}" was not saved when the program last ended.`,
    ['Bring it back', 'Leave it'],
  );
  if (chosen !== 'Bring it back') return;
  recoverDraft(draft, { name: document.name, handle: document.handle });
  tell(`Brought back "${draft.name}". It is not saved yet.`);
}

const always = (): boolean => true;

/** What is done with whole documents. */
export const DOCUMENT_ACTIONS: readonly ProgramAction[] = recorded([
  {
    id: 'file.new',
    enabled: always,
    perform: () => void replaceBy(emptyDraft(), 'A new order.'),
  },
  {
    id: 'file.open',
    enabled: always,
    perform: () => void open(null),
  },
  {
    id: 'file.demo',
    enabled: always,
    perform: () => void replaceBy(demoDraft(), 'The demo order.'),
  },
  {
    id: 'file.save',
    enabled: always,
    perform: () => void save(false),
  },
  {
    id: 'file.save-as',
    enabled: always,
    perform: () => void save(true),
  },
  {
    id: 'file.print',
    enabled: always,
    perform: () => window.print(),
  },
]);
