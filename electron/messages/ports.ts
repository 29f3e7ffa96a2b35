import type { Tab } from '../../shared/contract/tab.ts';

/** What the router asks of its surroundings, the desktop or a browser host. `null` stands for: the user thought better of it. */
export interface Ports {
  readonly documents: Documents;
  readonly recovery: Recovery;
  readonly output: Output;
  readonly about: { readonly version: string; readonly platform: 'desktop' | 'browser' };
}

export interface OpenedFile {
  readonly name: string;
  readonly handle: string | null;
  readonly bytes: Uint8Array;
}

export interface SavedFile {
  readonly name: string;
  readonly handle: string | null;
  /** Where a browser fetches it from. */
  readonly download?: string;
}

/** A file that another program, or another machine, has written to since it was read or written here. */
export interface ChangedOutside {
  readonly changedOutside: string;
}

export interface RecentDocument {
  readonly handle: string;
  readonly name: string;
  readonly folder: string;
}

export interface DocumentState {
  readonly unsaved: boolean;
  readonly name: string;
}

export interface Documents {
  readonly open: (source: string | null) => Promise<OpenedFile | null>;
  /** `replaceChanged`: also a file that was changed outside; else such a one is left and told. */
  readonly save: (
    handle: string | null,
    suggestedName: string,
    text: string,
    replaceChanged?: boolean,
  ) => Promise<SavedFile | ChangedOutside | null>;
  readonly recent: () => Promise<readonly RecentDocument[]>;
  readonly changed: (state: DocumentState) => void;
}

/** Work that was not saved, as it is handed out and taken in. */
export interface Snapshot {
  readonly name: string;
  readonly handle: string | null;
  readonly text: string;
}

export interface Recovery {
  readonly keep: (tab: Tab, snapshot: Snapshot) => Promise<void>;
  /** What this tab left before it was loaded again, or else the newest that a tab left which is gone. */
  readonly kept: (tab: Tab, open: readonly string[]) => Promise<Snapshot | null>;
  /** The tab's work is saved, or given up. */
  readonly forget: (tab: Tab) => Promise<void>;
  /** As `forget`, and what was offered to the tab is settled too. */
  readonly settle: (tab: Tab) => Promise<void>;
  /** As `settle`, for every tab of this run. */
  readonly settleAll: () => Promise<void>;
}

/** A folder of cut files in the making. */
export interface OutputFolder {
  readonly write: (
    path: string,
    content: string | Uint8Array,
  ) => Promise<{ readonly size: number; readonly sha256: string }>;
  readonly finish: () => Promise<{ readonly place: string; readonly download?: string }>;
  readonly discard: () => Promise<void>;
}

export interface Output {
  readonly begin: (suggestedName: string) => Promise<OutputFolder | null>;
  /** Gets only places that a `finish` of this run returned. */
  readonly show: (place: string) => Promise<void>;
}
