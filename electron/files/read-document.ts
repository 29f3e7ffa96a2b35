import { createHash } from 'node:crypto';
import { open } from 'node:fs/promises';
import { basename } from 'node:path';
import { reasonOf, Refusal } from './refusal.ts';

/** 32 MiB; an order of 500 drawers is below 1 MiB. */
export const MAX_DOCUMENT_BYTES = 32 * 1024 * 1024;

/** Reads a file that is small enough to be a document; a refusal says what hinders it. */
export async function readDocument(path: string): Promise<Uint8Array> {
  try {
    const handle = await open(path, 'r');
    try {
      const found = await handle.stat();
      if (found.isDirectory()) throw new Refusal(`${basename(path)} is a folder`);
      if (!found.isFile()) throw new Refusal(`${basename(path)} is no ordinary file`);
      if (found.size > MAX_DOCUMENT_BYTES) {
        throw new Refusal(`${basename(path)} is larger than ${MAX_DOCUMENT_BYTES / 1024 / 1024} MB`);
      }
      return await handle.readFile();
    } finally {
      await handle.close();
    }
  } catch (problem) {
    if (problem instanceof Refusal) throw problem;
    throw new Refusal(`${basename(path)} cannot be read: ${reasonOf(problem)}`);
  }
}

/** SHA-256 in hexadecimal digits. */
export const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
