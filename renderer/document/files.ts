/** Asks for a text file; null when nobody chose one. */
export type OpenText = () => Promise<{ readonly name: string; readonly text: string } | null>;

/** Saves a text under a name that may be changed. */
export type SaveText = (suggestedName: string, text: string) => void;
