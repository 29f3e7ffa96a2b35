/** What a text says as JSON; null when it is none, which every schema and parser of a document refuses. */
export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
