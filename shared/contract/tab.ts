/** A tab or window that works on a document, and the browser that it is one of; both are UUIDs. */
export interface Tab {
  readonly id: string;
  readonly browser: string;
}

/** A UUID in small letters: the id is part of a file's name, and some systems do not tell capitals apart. */
export const TAB_ID = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
