import type { LengthUnit } from '../../core/order/types.ts';
import type { Draft } from '../../core/project/draft.ts';
import type { Designed } from '../../core/session/types.ts';

/** The pages of the program. `bench` holds the order, the stage and the readout side by side. */
export type PageName = 'bench' | 'standard' | 'machine' | 'output' | 'jigs';

/** What the stage of the bench shows. */
export type StageName = 'seat' | 'cabinet' | 'part' | 'screw' | 'gaps';

export type ThemeName = 'light' | 'dark';

/** What is picked, everywhere at once. */
export interface Selection {
  /** A row of the draft. */
  readonly rowId: string | null;
  readonly jigId: string | null;
  readonly partId: string | null;
}

/** How things are shown; not part of the document. */
export interface ViewSettings {
  readonly page: PageName;
  readonly stage: StageName;
  readonly theme: ThemeName;
  /** Unit of every length on the screen. */
  readonly unit: LengthUnit;
  /** Only rows that have a finding. */
  readonly onlyAttention: boolean;
}

/** Where the document came from and whether it holds unsaved work. */
export interface FileState {
  /** Shown in the title; null for a document that has no file yet. */
  readonly name: string | null;
  /** What the platform knows the file by; null when it must ask. */
  readonly handle: string | null;
  readonly savedDraft: Draft;
}

/** One change of the draft that can be taken back, or made again. */
export interface HistoryStep {
  /** For people, as it follows "Undo": `change opening w of row 3`. */
  readonly label: string;
  /** The draft that this step leads back (or forward) to. */
  readonly draft: Draft;
  /** The row that it is about, to be selected again. */
  readonly rowId: string | null;
  /** Changes in a row that have the same key are one step; null: a step of its own. */
  readonly mergeKey: string | null;
}

export interface History {
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
}

/** State of the program. Actions change it through the store only. */
export interface ProgramState {
  readonly draft: Draft;
  /** Null until the worker has answered for the first time; may lag behind the draft. */
  readonly designed: Designed | null;
  readonly selection: Selection;
  readonly view: ViewSettings;
  readonly file: FileState;
  readonly history: History;
}
