/** A whole number as a document has it; anything else stays text, and the parser says what it wants. */
export const wholeNumber = (text: string): string | number =>
  /^\d{1,6}$/.test(text.trim()) ? Number(text) : text;
