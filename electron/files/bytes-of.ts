/** The bytes of what a file is to hold; text is UTF-8. */
export const bytesOf = (content: string | Uint8Array): Uint8Array =>
  typeof content === 'string' ? Buffer.from(content, 'utf8') : content;
